import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { correctMotion, errorBetween } from "./filter-correct.ts";
import { errorCount, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import { sightRows, sightSpread } from "./sight-rows.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/**
 * The motion after a picture: a Kalman step (Bar-Shalom, Li and Kirubarajan 2001, 5.2) for what the picture measures of grip and direction. A sight
 * that lies beyond `robustBeyond` sds of what was expected pulls no more than one there (Huber 1964). `widen`: factor on the variances that are stated.
 */
export function updateMotion(motion: ShaftMotion, sight: ShaftInWorld, widen: number): ShaftMotion {
  const away = errorBetween(motion, { ...motion, grip: sight.grip, toHead: sight.toHead });
  const rows = sightRows(motion.toHead);
  const miss = rows.map((row) => dot(row, away));
  const carried = rows.map((row) => timesRow(motion.covariance, row));
  const stated = sightSpread(sight);
  // The lower half and its mirror: rounding must not part them.
  const total = (by: number): Matrix => {
    const sum = new Matrix(5, 5);
    rows.forEach((row, i) => {
      carried.slice(0, i + 1).forEach((column, j) => {
        const value = dot(row, column) + by * (stated[5 * i + j] ?? 0);
        sum.set(i, j, value);
        sum.set(j, i, value);
      });
    });
    return sum;
  };
  let factor = new CholeskyDecomposition(total(widen));
  if (!factor.isPositiveDefinite()) return motion;
  const inSds = Math.sqrt(Math.max(0, dot(miss, factor.solve(Matrix.columnVector(miss)).to1DArray())));
  if (inSds > filterTuning.robustBeyond) {
    factor = new CholeskyDecomposition(total((widen * inSds) / filterTuning.robustBeyond));
  }
  const weights = factor.solve(Matrix.columnVector(miss)).to1DArray();
  const error = new Float64Array(errorCount);
  carried.forEach((column, k) => {
    for (let i = 0; i < errorCount; i++) error[i] = (error[i] ?? 0) + (column[i] ?? 0) * (weights[k] ?? 0);
  });
  const solved = factor.solve(new Matrix(carried.map((column) => Array.from(column))));
  const covariance = motion.covariance.slice();
  for (let i = 0; i < errorCount; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = covariance[i * errorCount + j] ?? 0;
      for (let k = 0; k < 5; k++) sum -= (carried[k]?.[i] ?? 0) * solved.get(k, j);
      covariance[i * errorCount + j] = sum;
      covariance[j * errorCount + i] = sum;
    }
  }
  return correctMotion({ ...motion, covariance }, error);
}

/** How far a sight lies from a motion, in its own standard deviations. */
export function missInSds(motion: ShaftMotion, sight: ShaftInWorld): number {
  const away = errorBetween(motion, { ...motion, grip: sight.grip, toHead: sight.toHead });
  const miss = sightRows(motion.toHead).map((row) => dot(row, away));
  const stated = sightSpread(sight);
  const spread = new Matrix(5, 5);
  for (let i = 0; i < 5; i++) {
    for (let j = 0; j <= i; j++) {
      spread.set(i, j, stated[5 * i + j] ?? 0);
      spread.set(j, i, stated[5 * i + j] ?? 0);
    }
  }
  const factor = new CholeskyDecomposition(spread);
  if (!factor.isPositiveDefinite()) return 0;
  return Math.sqrt(Math.max(0, dot(miss, factor.solve(Matrix.columnVector(miss)).to1DArray())));
}

function timesRow(covariance: Float64Array, row: Float64Array): Float64Array {
  const product = new Float64Array(errorCount);
  for (let i = 0; i < errorCount; i++) {
    let sum = 0;
    for (let j = 0; j < errorCount; j++) sum += (covariance[i * errorCount + j] ?? 0) * (row[j] ?? 0);
    product[i] = sum;
  }
  return product;
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
