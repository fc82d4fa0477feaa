import type { PictureWindow } from "./station-store.ts";

/** The ground takes up about this share of the picture of a phone at hand height. */
const groundShare = 0.6;

/** Where sticks may lie that nobody has found yet. */
export const lowerPart = ({ width, height }: { readonly width: number; readonly height: number }): PictureWindow => ({
  x: 0,
  y: (1 - groundShare) * height,
  width,
  height: groundShare * height,
});
