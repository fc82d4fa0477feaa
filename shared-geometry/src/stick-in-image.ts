import { mirrorPoint } from "./mirror-picture.ts";
import type { Point } from "./point.ts";
import type { StationLine } from "./station.ts";
import { pixels, type Pixels } from "./units.ts";

/**
 * One of the two places by which a stick's line in the picture is given. `isEnd`: the stick really ends there; false where
 * a foot hides the end or the picture cuts it off, so that the place only serves the line.
 */
export interface StickEnd {
  readonly at: Point<"image">;
  readonly isEnd: boolean;
  /** One standard deviation across the stick and along it. `alongSd` counts only where the stick ends. */
  readonly acrossSd: Pixels;
  readonly alongSd: Pixels;
}

export const stickEndNames = ["near", "far"] as const;
export type StickEndName = (typeof stickEndNames)[number];

/** A stick in the picture: `near` is nearer to the camera. Pixels of the picture as it was taken, also for a left-handed golfer. */
export interface StickInImage {
  readonly line: StationLine;
  readonly near: StickEnd;
  readonly far: StickEnd;
}

/** How well a thumb under a magnifier, or a coarse fit, places a stick's end. */
export const usualEndSd = pixels(1);

/** A stick of which both ends are seen. */
export function stickBetween(
  line: StationLine,
  near: Point<"image">,
  far: Point<"image">,
  sd: Pixels = usualEndSd,
): StickInImage {
  const end = (at: Point<"image">): StickEnd => ({ at, isEnd: true, acrossSd: sd, alongSd: sd });
  return { line, near: end(near), far: end(far) };
}

/** A stick seen in a mirror. */
export function mirrorStick(stick: StickInImage, width: Pixels): StickInImage {
  return {
    line: stick.line,
    near: { ...stick.near, at: mirrorPoint(stick.near.at, width) },
    far: { ...stick.far, at: mirrorPoint(stick.far.at, width) },
  };
}
