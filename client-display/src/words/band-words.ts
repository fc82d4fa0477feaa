import type { BandId } from "@overcue/shared-geometry/bands";

/** The band's word set in the lines that the key word is drawn in; joined by spaces they are the band's label. */
export const bandLines: Readonly<Record<BandId, readonly [string, string]>> = {
  "beyond-ball": ["beyond", "the ball"],
  "ball-line": ["ball", "line"],
  "ball-to-toe": ["ball to", "toes"],
  "toe-line": ["toe", "line"],
  "toe-to-heel": ["toes to", "heels"],
  "heel-line": ["heel", "line"],
  "behind-heels": ["behind", "the heels"],
};
