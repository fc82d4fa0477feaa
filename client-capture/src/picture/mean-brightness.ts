import type { Picture } from "./picture.ts";

/** One pixel in this many, each way, is looked at. */
const stride = 16;

/** How bright a picture is on the whole: the mean of its brightness on a coarse grid, 0 black to 255 white. */
export function meanBrightness({ width, height, luma }: Picture): number {
  let sum = 0;
  let count = 0;
  for (let y = stride >> 1; y < height; y += stride) {
    for (let x = stride >> 1; x < width; x += stride) {
      sum += luma[y * width + x] ?? 0;
      count++;
    }
  }
  return count === 0 ? 0 : sum / count;
}
