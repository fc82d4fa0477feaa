import type { Picture } from "../picture/picture.ts";

/** Brightness, blue and red difference at a place. */
export type Colour = readonly [number, number, number];

/** The colour at a place of the picture (bilinear; pixel centres lie at half pixels; colour is stored at half size); null outside of it. */
export function sampleColour({ width, height, luma, chroma }: Picture, x: number, y: number): Colour | null {
  const bright = bilinear(luma, width, height, x, y);
  if (bright === null) return null;
  if (!chroma) return [bright, 128, 128];
  const halfWidth = Math.ceil(width / 2);
  const halfHeight = Math.ceil(height / 2);
  // At the picture's rim the half-size grid ends half a step sooner.
  const halfX = Math.min(Math.max(x / 2, 0.5), halfWidth - 0.5001);
  const halfY = Math.min(Math.max(y / 2, 0.5), halfHeight - 0.5001);
  const blue = bilinear(chroma.blue, halfWidth, halfHeight, halfX, halfY) ?? 128;
  const red = bilinear(chroma.red, halfWidth, halfHeight, halfX, halfY) ?? 128;
  return [bright, blue, red];
}

function bilinear(values: Uint8Array, width: number, height: number, x: number, y: number): number | null {
  const column = x - 0.5;
  const row = y - 0.5;
  const left = Math.floor(column);
  const top = Math.floor(row);
  if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) return null;
  const across = column - left;
  const down = row - top;
  const at = top * width + left;
  const above = (values[at] ?? 0) * (1 - across) + (values[at + 1] ?? 0) * across;
  const below = (values[at + width] ?? 0) * (1 - across) + (values[at + width + 1] ?? 0) * across;
  return above * (1 - down) + below * down;
}
