import { Matrix, solve, inverse } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { at, errorCount, type ShaftMotion } from "@overcue/shared-geometry/filter-motion";
import { startMotion } from "@overcue/shared-geometry/filter-start";
import { stepMotion, type FilterStep } from "@overcue/shared-geometry/filter-step";
import { filterTuning } from "@overcue/shared-geometry/filter-tuning";
import { worldPoint } from "@overcue/shared-geometry/point";
import { smoothStep } from "@overcue/shared-geometry/smooth-step";
import { unrestAt } from "@overcue/shared-geometry/swing-pace";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { gaussian, namedRandom } from "../scenes/random.ts";

const seconds = 0.1;
const count = 12;
const placeSd = 0.02;
const pace = { turn: 1, hands: 0.8 };

/** A hand that drifts along x, seen with noise, the shaft held still. */
function sights(seed: number): ShaftInWorld[] {
  const random = namedRandom(seed, "drift");
  const covariance = new Array<number>(25).fill(0);
  [0, 6, 12].forEach((index) => (covariance[index] = placeSd ** 2));
  [18, 24].forEach((index) => (covariance[index] = 0.01 ** 2));
  return Array.from({ length: count }, (_, index) => ({
    t: milliseconds(1000 * seconds * index),
    grip: worldPoint(0.3 * index * seconds + placeSd * gaussian(random), 0.5, 0.9),
    toHead: { x: 0, y: -0.6, z: -0.8 },
    covariance,
  }));
}

/** Place and speed at every time by one least-squares problem over all of them (normal equations): no recursion to share a mistake with. */
function leastSquares(seen: readonly ShaftInWorld[]): { mean: number[]; variance: number[] } {
  const size = 2 * seen.length;
  const normal = Matrix.zeros(size, size);
  const side = Matrix.zeros(size, 1);
  const least = 1e-4;
  const add = (rows: Matrix, wanted: Matrix, weight: Matrix): void => {
    normal.add(rows.transpose().mmul(weight).mmul(rows));
    side.add(rows.transpose().mmul(weight).mmul(wanted));
  };
  const row = (entries: readonly (readonly [number, number])[]): number[] => {
    const values = new Array<number>(size).fill(0);
    for (const [index, value] of entries) values[index] = value;
    return values;
  };
  add(new Matrix([row([[1, 1]])]), new Matrix([[0]]), new Matrix([[1 / filterTuning.firstSpeedSd ** 2]]));
  seen.forEach(({ grip }, index) => {
    add(new Matrix([row([[2 * index, 1]])]), new Matrix([[grip.x]]), new Matrix([[1 / (placeSd ** 2 + least ** 2)]]));
    if (index === 0) return;
    const q = unrestAt(pace).hands;
    const noise = new Matrix([
      [(q * seconds ** 3) / 3, (q * seconds ** 2) / 2],
      [(q * seconds ** 2) / 2, q * seconds],
    ]);
    const [p, v] = [2 * index - 2, 2 * index - 1];
    const rows = new Matrix([
      row([
        [p, -1],
        [v, -seconds],
        [p + 2, 1],
      ]),
      row([
        [v, -1],
        [v + 2, 1],
      ]),
    ]);
    add(rows, Matrix.zeros(2, 1), inverse(noise));
  });
  return { mean: solve(normal, side).to1DArray(), variance: inverse(normal).diagonal() };
}

describe("the filter on a linear case, against one least-squares fit over all pictures", () => {
  it.each([1, 2, 3])("F6 filtered and smoothed place, speed and spread agree to a micrometre, seed %i", (seed) => {
    const seen = sights(seed);
    const [first, ...rest] = seen;
    if (!first) throw new Error("no sights");
    const begun = startMotion(first);
    const steps: FilterStep[] = [];
    for (const sight of rest) {
      steps.push(stepMotion(steps.at(-1)?.motion ?? begun, sight.t, sight, null, { pace, widen: 1 }));
    }
    const smoothed: ShaftMotion[] = [steps.at(-1)?.motion ?? begun];
    for (let index = steps.length - 1; index >= 0; index--) {
      const [step, later] = [steps[index], smoothed[0]];
      const filtered = index === 0 ? begun : steps[index - 1]?.motion;
      if (step && later && filtered) smoothed.unshift(smoothStep(filtered, step.expected, step.carried, later));
    }
    const whole = leastSquares(seen);
    smoothed.forEach(({ grip, velocity, covariance }, index) => {
      const variance = (which: number): number => covariance[which * (errorCount + 1)] ?? NaN;
      expect(grip.x).toBeCloseTo(whole.mean[2 * index] ?? NaN, 6);
      expect(velocity.x).toBeCloseTo(whole.mean[2 * index + 1] ?? NaN, 6);
      expect(Math.sqrt(variance(at.grip))).toBeCloseTo(Math.sqrt(whole.variance[2 * index] ?? NaN), 6);
      expect(Math.sqrt(variance(at.velocity))).toBeCloseTo(Math.sqrt(whole.variance[2 * index + 1] ?? NaN), 6);
    });
    const half = steps[5]?.motion;
    expect(half?.grip.x).toBeCloseTo(leastSquares(seen.slice(0, 7)).mean[12] ?? NaN, 6);
  });
});
