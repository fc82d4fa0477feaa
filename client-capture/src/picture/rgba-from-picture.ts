import type { Picture } from "./picture.ts";

/** A picture as it is shown: width * height * 4 bytes, opaque, by ITU-R BT.601 full range. Grey where it has no colour. */
export function rgbaFromPicture({ width, height, luma, chroma }: Picture): Uint8ClampedArray<ArrayBuffer> {
  const rgba = new Uint8ClampedArray(width * height * 4);
  const halfWidth = Math.ceil(width / 2);
  for (let y = 0, pixel = 0; y < height; y++) {
    const row = (y >> 1) * halfWidth;
    for (let x = 0; x < width; x++, pixel++) {
      const half = row + (x >> 1);
      const bright = luma[pixel] ?? 0;
      const blue = (chroma?.blue[half] ?? 128) - 128;
      const red = (chroma?.red[half] ?? 128) - 128;
      const byte = 4 * pixel;
      rgba[byte] = bright + 1.402 * red;
      rgba[byte + 1] = bright - 0.344136 * blue - 0.714136 * red;
      rgba[byte + 2] = bright + 1.772 * blue;
      rgba[byte + 3] = 255;
    }
  }
  return rgba;
}
