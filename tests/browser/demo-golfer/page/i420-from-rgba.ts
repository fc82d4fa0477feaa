/**
 * Planar 4:2:0 (full Y, then quarter-size Cb and Cr) of an RGBA picture, ITU-R BT.601 in video range (16-235), as Y4M files hold it.
 * `width` and `height` are even.
 */
export function i420FromRgba(rgba: Uint8ClampedArray, width: number, height: number): Uint8Array<ArrayBuffer> {
  const half = width / 2;
  const luma = width * height;
  const out = new Uint8Array(luma * 1.5);
  const at = (byte: number): number => rgba[byte] ?? 0;
  for (let k = 0; k < luma; k++) {
    const byte = 4 * k;
    out[k] = 16 + (65.738 * at(byte) + 129.057 * at(byte + 1) + 25.064 * at(byte + 2)) / 256 + 0.5;
  }
  for (let row = 0; row < height / 2; row++) {
    for (let column = 0; column < half; column++) {
      const first = 4 * (2 * row * width + 2 * column);
      const below = first + 4 * width;
      const mean = (channel: number): number =>
        (at(first + channel) + at(first + 4 + channel) + at(below + channel) + at(below + 4 + channel)) / 4;
      const r = mean(0);
      const g = mean(1);
      const b = mean(2);
      const k = luma + row * half + column;
      out[k] = 128.5 + (-37.945 * r - 74.494 * g + 112.439 * b) / 256;
      out[k + luma / 4] = 128.5 + (112.439 * r - 94.154 * g - 18.285 * b) / 256;
    }
  }
  return out;
}
