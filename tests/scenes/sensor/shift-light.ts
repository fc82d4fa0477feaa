import type { Canvas } from "../canvas.ts";

const kept = new WeakMap<Canvas, Float32Array>();

/**
 * The middle of a canvas painted with a margin, moved by a part of a pixel, at the size of `canvas`. The result is used
 * again for the next call with the same canvas.
 */
export function shiftLight(
  background: Canvas,
  canvas: Canvas,
  margin: number,
  shiftX: number,
  shiftY: number,
): Float32Array {
  const out = kept.get(canvas) ?? new Float32Array(canvas.width * canvas.height * 3);
  kept.set(canvas, out);
  const left = Math.floor(margin - shiftX);
  const top = Math.floor(margin - shiftY);
  const across = margin - shiftX - left;
  const down = margin - shiftY - top;
  const { rgb } = background;
  const length = canvas.width * 3;
  const upper = new Float64Array(length);
  for (let row = 0; row <= canvas.height; row++) {
    let from = ((row + top) * background.width + left) * 3;
    let to = (row - 1) * length;
    for (let at = 0; at < length; at++, from++, to++) {
      const lower = (rgb[from] ?? 0) + across * ((rgb[from + 3] ?? 0) - (rgb[from] ?? 0));
      if (row > 0) out[to] = (upper[at] ?? 0) + down * (lower - (upper[at] ?? 0));
      upper[at] = lower;
    }
  }
  return out;
}
