import type { BandLayout } from "./bands.ts";
import type { Metres } from "./units.ts";

export type Handed = "right" | "left";

export type ClubId = "driver" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron";

export const stationLines = ["ball-line", "toe-line", "heel-line"] as const;
export type StationLine = (typeof stationLines)[number];

/** What the user says of the laid station. Lengths in metres; distances are from the ball line. */
export interface StationSettings extends BandLayout {
  readonly handed: Handed;
  readonly club: ClubId;
  /** Butt end to sole along the shaft. */
  readonly clubLength: Metres;
  /** How far the practice rod stands out of the butt end; 0 where there is no rod. */
  readonly rodBeyondButt: Metres;
  readonly stickLength: Metres;
  readonly sticksPresent: readonly StationLine[];
}
