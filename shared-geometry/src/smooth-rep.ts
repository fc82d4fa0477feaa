import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { carryOnce, type Transition } from "./filter-transition.ts";
import { answerOf } from "./filter-answer.ts";
import { correctMotion, errorBetween } from "./filter-correct.ts";
import { errorCount, type ShaftMotion } from "./filter-motion.ts";
import {
  filterShaft,
  startFilter,
  type FilterInput,
  type FilterSetting,
  type PastStep,
  type ShaftFilterState,
} from "./filter-shaft.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/**
 * A finished rep gone over once more: each picture's shaft in the light of those before and after it (Rauch, Tung and Striebel 1965, on the errors about
 * the filtered motion). One shaft for each input from the first that could be lifted on; empty where none could. Where the lean never
 * settled, the likelier is followed.
 */
export function smoothRep(inputs: readonly FilterInput[], setting: FilterSetting): ShaftInWorld[] {
  let state: ShaftFilterState = startFilter;
  for (const input of inputs) state = filterShaft(state, input, setting, true).state;
  return smoothBack(state, Infinity).map((motion) => answerOf(motion, setting.through, null));
}

/** The filter's answer for a few pictures ago, in the light of those since: later, and surer. Null where it has not run that long. Needs the past kept. */
export function laggedAnswer(state: ShaftFilterState, pictures: number, setting: FilterSetting): ShaftInWorld | null {
  const [oldest, ...rest] = smoothBack(state, pictures);
  return oldest && rest.length === pictures ? answerOf(oldest, setting.through, null) : null;
}

/** Smoothed motions, oldest first, at most `pictures` back from the newest. */
function smoothBack(state: ShaftFilterState, pictures: number): ShaftMotion[] {
  const newest = state.hypotheses[0]?.past;
  if (!newest) return [];
  const smoothed = [newest.motion];
  let later: ShaftMotion = newest.motion;
  let step: PastStep = newest;
  while (step.before && step.expected && step.carried && smoothed.length <= pictures) {
    later = smoothStep(step.before.motion, step.expected, step.carried, later);
    smoothed.push(later);
    step = step.before;
  }
  return smoothed.toReversed();
}

function smoothStep(
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
