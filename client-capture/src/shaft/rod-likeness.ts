import type { Picture } from "../picture/picture.ts";

/** A practice rod's colour as the camera sees it, as how much each Cb, Cr counts as rod: 64 * 64 values, 0 to 255, Cb-major. */
export interface RodColour {
  readonly likeness: Uint8Array;
  /** Cb and Cr of the rod itself, 128 = no colour. */
  readonly blue: number;
  readonly red: number;
}

export const colourCells = 64;
const shift = 8 - Math.log2(colourCells);

/** Where a colour's likeness stands, Cb and Cr 0 to 255. */
export const cellOf = (blue: number, red: number): number => (blue >> shift) * colourCells + (red >> shift);

/** How much the rod itself is like the rod. */
export const ownLikeness = ({ likeness, blue, red }: RodColour): number => likeness[cellOf(blue, red)] as number;

/** How much the pixel of the half-size colour planes at `at` is like the rod, 0 to 255; 0 for a grey picture. */
export function rodLikeness({ chroma }: Picture, rod: RodColour, at: number): number {
  if (chroma === null) return 0;
  return rod.likeness[cellOf(chroma.blue[at] as number, chroma.red[at] as number)] as number;
}
