import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { correctMotion, errorBetween } from "./filter-correct.ts";
import { errorCount, type ShaftMotion } from "./filter-motion.ts";
import { carryOnce, type Transition } from "./filter-transition.ts";

/** A filtered motion in the light of the next one, once that is smoothed (Rauch, Tung and Striebel 1965, on the errors about the filtered motion). */
export function smoothStep(
  filtered: ShaftMotion,
  expected: ShaftMotion,
  transition: Transition,
  later: ShaftMotion,
): ShaftMotion {
  const square = (covariance: Float64Array): Matrix => Matrix.from1DArray(errorCount, errorCount, covariance);
  // A turn about the shaft itself has no variance: a hair of it lets the matrix be inverted.
  const spread = square(expected.covariance).add(Matrix.eye(errorCount).mul(1e-10));
  for (let i = 0; i < errorCount; i++) {
    for (let j = 0; j < i; j++) spread.set(i, j, spread.get(j, i));
  }
  const factor = new CholeskyDecomposition(spread);
  if (!factor.isPositiveDefinite()) return filtered;
  const gain = factor.solve(carryOnce(filtered.covariance, transition)).transpose();
  const error = gain.mmul(Matrix.columnVector(errorBetween(expected, later))).to1DArray();
  const change = square(later.covariance).sub(square(expected.covariance));
  const covariance = square(filtered.covariance).add(gain.mmul(change).mmul(gain.transpose()));
  return correctMotion({ ...filtered, covariance: Float64Array.from(covariance.to1DArray()) }, error);
}
