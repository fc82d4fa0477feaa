import type { Rectangle } from "../canvas.ts";

/** Adds back the difference from a 5x5 neighbourhood (two passes of a running mean of three). */
export function sharpen(
  luma: Float32Array,
  work: Float32Array,
  width: number,
  height: number,
  within: Rectangle,
  strength: number,
): void {
  const inner = {
    left: Math.max(2, within.left),
    right: Math.min(width - 2, within.right),
    top: Math.max(2, within.top),
    bottom: Math.min(height - 2, within.bottom),
  };
  const plane = width * height;
  for (let row = Math.max(0, inner.top - 2); row < Math.min(height, inner.bottom + 2); row++) {
    for (let column = inner.left; column < inner.right; column++) {
      const at = row * width + column;
      work[at] =
        ((luma[at - 2] ?? 0) +
          (luma[at + 2] ?? 0) +
          2 * ((luma[at - 1] ?? 0) + (luma[at + 1] ?? 0)) +
          3 * (luma[at] ?? 0)) /
        9;
    }
  }
  for (let row = inner.top; row < inner.bottom; row++) {
    for (let column = inner.left; column < inner.right; column++) {
      const at = row * width + column;
      const around =
        ((work[at - 2 * width] ?? 0) +
          (work[at + 2 * width] ?? 0) +
          2 * ((work[at - width] ?? 0) + (work[at + width] ?? 0)) +
          3 * (work[at] ?? 0)) /
        9;
      work[plane + at] = (luma[at] ?? 0) + strength * ((luma[at] ?? 0) - around);
    }
  }
  for (let row = inner.top; row < inner.bottom; row++) {
    const start = row * width;
    luma.set(work.subarray(plane + start + inner.left, plane + start + inner.right), start + inner.left);
  }
}
