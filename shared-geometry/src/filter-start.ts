import { at, errorCount, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import { sightRows, sightSpread } from "./sight-rows.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** A motion that begins where one picture says, at rest for all that is known. */
export function startMotion(sight: ShaftInWorld): ShaftMotion {
  const { firstSpeedSd, firstRateSd } = filterTuning;
  const covariance = new Float64Array(errorCount * errorCount);
  const rows = sightRows(sight.toHead);
  const spread = sightSpread(sight);
  const add = (a: Float64Array, b: Float64Array, by: number): void => {
    for (let i = 0; i < errorCount; i++) {
      for (let j = 0; j < errorCount; j++) {
        const index = i * errorCount + j;
        covariance[index] = (covariance[index] ?? 0) + by * (a[i] ?? 0) * (b[j] ?? 0);
      }
    }
  };
  rows.forEach((row, i) => {
    rows.forEach((other, j) => {
      add(row, other, spread[5 * i + j] ?? 0);
    });
  });
  for (const [first, row] of rows.entries()) {
    const rate = new Float64Array(errorCount);
    rate.set(
      first < 3 ? row.subarray(at.grip, at.grip + 3) : row.subarray(at.direction, at.direction + 3),
      first < 3 ? at.velocity : at.turn,
    );
    add(rate, rate, (first < 3 ? firstSpeedSd : firstRateSd) ** 2);
  }
  return {
    t: sight.t,
    grip: sight.grip,
    velocity: { x: 0, y: 0, z: 0 },
    toHead: sight.toHead,
    turn: { x: 0, y: 0, z: 0 },
    pace: { turn: 0, hands: 0 },
    covariance,
  };
}
