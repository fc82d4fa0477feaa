import { CholeskyDecomposition, Matrix } from "ml-matrix";
import type { Picture } from "../picture/picture.ts";
import { stationTuning } from "./station-tuning.ts";

/** How each pixel of a band of rows differs from what lies to its left and right, whitened: one sd of the whole band's differences is 1 in every channel. */
export interface RidgeMap {
  readonly width: number;
  readonly firstRow: number;
  readonly rows: number;
  /** Three numbers a pixel, row-major. */
  readonly values: Float32Array;
}

/** A band of the picture as differences in brightness and colour from the ground beside. Null for a band of one colour. */
export function ridgeMap(picture: Picture, firstRow: number, lastRow: number): RidgeMap | null {
  const { width, luma, chroma } = picture;
  const rows = lastRow - firstRow;
  const values = new Float32Array(width * rows * 3);
  const halfWidth = Math.ceil(width / 2);
  const aside = stationTuning.ridgeReach;
  const sums = new Float64Array(9);
  let count = 0;
  for (let row = 0; row < rows; row++) {
    const start = (row + firstRow) * width;
    const half = ((row + firstRow) >> 1) * halfWidth;
    for (let x = aside; x < width - aside; x++) {
      const at = (row * width + x) * 3;
      values[at] = (luma[start + x] ?? 0) - ((luma[start + x - aside] ?? 0) + (luma[start + x + aside] ?? 0)) / 2;
      if (chroma) {
        const [on, left, right] = [half + (x >> 1), half + ((x - aside) >> 1), half + ((x + aside) >> 1)];
        values[at + 1] = (chroma.blue[on] ?? 0) - ((chroma.blue[left] ?? 0) + (chroma.blue[right] ?? 0)) / 2;
        values[at + 2] = (chroma.red[on] ?? 0) - ((chroma.red[left] ?? 0) + (chroma.red[right] ?? 0)) / 2;
      }
      // Strong differences are things, not ground: they must not set the scale.
      if (Math.abs(values[at] ?? 0) > 40) continue;
      count++;
      for (let i = 0; i < 3; i++) {
        for (let j = 0; j <= i; j++)
          sums[3 * i + j] = (sums[3 * i + j] ?? 0) + (values[at + i] ?? 0) * (values[at + j] ?? 0);
      }
    }
  }
  const covariance = Matrix.zeros(3, 3);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j <= i; j++) {
      const value = (sums[3 * i + j] ?? 0) / Math.max(1, count) + (i === j ? 1 : 0);
      covariance.set(i, j, value);
      covariance.set(j, i, value);
    }
  }
  const factor = new CholeskyDecomposition(covariance);
  if (!factor.isPositiveDefinite()) return null;
  whiten(values, factor.lowerTriangularMatrix);
  return { width, firstRow, rows, values };
}

function whiten(values: Float32Array, lower: Matrix): void {
  const [a, b, c] = [lower.get(0, 0), lower.get(1, 0), lower.get(1, 1)];
  const [d, e, f] = [lower.get(2, 0), lower.get(2, 1), lower.get(2, 2)];
  const clip = stationTuning.ridgeClip;
  for (let at = 0; at < values.length; at += 3) {
    const first = (values[at] ?? 0) / a;
    const second = ((values[at + 1] ?? 0) - b * first) / c;
    const third = ((values[at + 2] ?? 0) - d * first - e * second) / f;
    // One glaring pixel must not make a line.
    const by = clip / Math.max(clip, Math.hypot(first, second, third));
    values[at] = first * by;
    values[at + 1] = second * by;
    values[at + 2] = third * by;
  }
}
