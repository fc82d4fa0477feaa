import type { Metres } from "./units.ts";

/** The bands of the ground from far to near, as the golfer looks down on them. */
export const bandIds = [
  "beyond-ball",
  "ball-line",
  "ball-to-toe",
  "toe-line",
  "toe-to-heel",
  "heel-line",
  "behind-heels",
] as const;

export type BandId = (typeof bandIds)[number];

export const bandLabels: Readonly<Record<BandId, string>> = {
  "beyond-ball": "beyond the ball",
  "ball-line": "ball line",
  "ball-to-toe": "ball to toes",
  "toe-line": "toe line",
  "toe-to-heel": "toes to heels",
  "heel-line": "heel line",
  "behind-heels": "behind the heels",
};

/** Where the lines lie: distances from the ball line (y = 0) towards the heels, and how near to a line still counts as on it. */
export interface BandLayout {
  readonly toeLine: Metres;
  readonly heelLine: Metres;
  /** Half the width of a line's band, 0.05 m unless set otherwise. */
  readonly tolerance: Metres;
}

/**
 * The band that a read-out lies in, as a decision with odds. Where the best band's odds are under the setting the
 * decision is open: the two likeliest candidates are named, likeliest first, and nobody guesses.
 */
export type BandDecision =
  | { readonly decided: true; readonly band: BandId; readonly odds: number }
  | {
      readonly decided: false;
      readonly candidates: readonly [BandId, BandId];
      readonly odds: readonly [number, number];
    };
