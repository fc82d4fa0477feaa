import { milliseconds, type Milliseconds } from "./units.ts";

export const readingWays = ["down", "up", "left", "right"] as const;
export type ReadingWay = (typeof readingWays)[number];

/** How a camera reads its picture, one line of pixels after the other. */
export interface RollingShutter {
  /** From the first line's reading to the last line's; 0 where all are read at once. */
  readonly time: Milliseconds;
  /** The way in which the reading goes over the upright picture: a phone held upright mostly reads across it. */
  readonly towards: ReadingWay;
}

/** Of a picture that is drawn, not taken. */
export const readAtOnce: RollingShutter = { time: milliseconds(0), towards: "down" };
