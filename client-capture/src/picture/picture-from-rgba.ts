import type { Picture } from "./picture.ts";

/**
 * Brightness and half-size colour of an RGBA picture, by ITU-R BT.601 full range.
 * `rgba` holds width * height * 4 bytes, row-major; alpha is ignored. A odd last row or column is averaged over what is there.
 * @throws RangeError where `rgba` is shorter than the size says.
 */
export function pictureFromRgba(rgba: Uint8Array | Uint8ClampedArray, width: number, height: number): Picture {
  if (rgba.length < width * height * 4) throw new RangeError("pictureFromRgba: fewer bytes than the size says");
  const luma = new Uint8Array(width * height);
  const halfWidth = Math.ceil(width / 2);
  const halfHeight = Math.ceil(height / 2);
  const blue = new Uint8Array(halfWidth * halfHeight);
  const red = new Uint8Array(halfWidth * halfHeight);
  for (let pixel = 0, byte = 0; pixel < luma.length; pixel++, byte += 4) {
    luma[pixel] = (77 * at(rgba, byte) + 150 * at(rgba, byte + 1) + 29 * at(rgba, byte + 2) + 128) >> 8;
  }
  for (let row = 0; row < halfHeight; row++) {
    for (let column = 0; column < halfWidth; column++) {
      let r = 0;
      let g = 0;
      let b = 0;
      let count = 0;
      for (let y = 2 * row; y < Math.min(2 * row + 2, height); y++) {
        for (let x = 2 * column; x < Math.min(2 * column + 2, width); x++) {
          const byte = (y * width + x) * 4;
          r += at(rgba, byte);
          g += at(rgba, byte + 1);
          b += at(rgba, byte + 2);
          count++;
        }
      }
      const half = row * halfWidth + column;
      blue[half] = Math.min(255, Math.round(128 + (-0.168736 * r - 0.331264 * g + 0.5 * b) / count));
      red[half] = Math.min(255, Math.round(128 + (0.5 * r - 0.418688 * g - 0.081312 * b) / count));
    }
  }
  return { width, height, luma, chroma: { blue, red } };
}

const at = (bytes: Uint8Array | Uint8ClampedArray, index: number): number => bytes[index] ?? 0;
