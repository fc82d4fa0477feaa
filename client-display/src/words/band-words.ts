import type { BandId } from "@overcue/shared-geometry/bands";

/** The band's word in the two lines that the key word is drawn in: its label without the articles, which cost size and say nothing. */
export const bandLines: Readonly<Record<BandId, readonly [string, string]>> = {
  "beyond-ball": ["beyond", "ball"],
  "ball-line": ["ball", "line"],
  "ball-to-toe": ["ball to", "toes"],
  "toe-line": ["toe", "line"],
  "toe-to-heel": ["toes to", "heels"],
  "heel-line": ["heel", "line"],
  "behind-heels": ["behind", "heels"],
};

/** The same on one line, for lists. */
export const shortBand = (band: BandId): string => bandLines[band].join(" ");
