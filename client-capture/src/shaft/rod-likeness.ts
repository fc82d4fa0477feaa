import type { Picture } from "../picture/picture.ts";
import { colourCells, type RodColour } from "./learn-rod-colour.ts";

const shift = 8 - Math.log2(colourCells);

/** How much the pixel of the half-size colour planes at `at` is like the rod, 0 to 255; 0 for a grey picture. */
export function rodLikeness({ chroma }: Picture, rod: RodColour, at: number): number {
  if (chroma === null) return 0;
  const cell = ((chroma.blue[at] as number) >> shift) * colourCells + ((chroma.red[at] as number) >> shift);
  return rod.likeness[cell] as number;
}
