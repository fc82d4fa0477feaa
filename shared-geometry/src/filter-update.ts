import type { Camera } from "./camera.ts";
import { correctMotion } from "./filter-correct.ts";
import { measureMotion } from "./filter-measure.ts";
import { errorCount, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import type { LiftObservation } from "./lift-observation.ts";

export interface Update {
  readonly motion: ShaftMotion;
  /** Natural logarithm of how likely the observation was, up to a constant. */
  readonly logLikelihood: number;
}

/** For a motion that is behind the lens: nothing like what was seen. */
const impossible = -50;

/** No single number, however far off, speaks against a motion by more than this many squared sds. */
const mostAgainst = 12;

/**
 * The motion after a picture: an extended Kalman step, one number at a time (Bar-Shalom, Li and Kirubarajan 2001, 5.2 and 10.3).
 * Numbers far off what was expected lose weight. Camera and observation are a right-handed golfer's. Variances are taken `inflate` times as large;
 * `useLine` false leaves out the line and the head, which a first lift has already used.
 */
export function updateMotion(
  motion: ShaftMotion,
  observation: LiftObservation,
  camera: Camera,
  length: number,
  inflate: number,
  useLine = true,
): Update {
  const measurements = measureMotion(motion, observation, camera, length, useLine);
  if (!measurements) return { motion, logLikelihood: impossible };
  const covariance = motion.covariance.slice();
  const error = new Float64Array(errorCount);
  const gain = new Float64Array(errorCount);
  let logLikelihood = 0;
  for (const { miss, variance, row } of measurements) {
    let expected = 0;
    let total = 0;
    for (let i = 0; i < errorCount; i++) {
      let sum = 0;
      for (let j = 0; j < errorCount; j++) sum += (covariance[i * errorCount + j] ?? 0) * (row[j] ?? 0);
      gain[i] = sum;
      total += (row[i] ?? 0) * sum;
      expected += (row[i] ?? 0) * (error[i] ?? 0);
    }
    const innovation = miss - expected;
    const plain = total + variance * inflate;
    const inSds = Math.abs(innovation) / Math.sqrt(plain);
    const scale = inSds > filterTuning.robustBeyond ? (inSds / filterTuning.robustBeyond) ** 2 : 1;
    const spread = total + variance * inflate * scale;
    logLikelihood -= 0.5 * (Math.min(inSds * inSds, mostAgainst) + Math.log(plain));
    for (let i = 0; i < errorCount; i++) {
      const by = (gain[i] ?? 0) / spread;
      error[i] = (error[i] ?? 0) + by * innovation;
      // The lower half and its mirror: rounding must not part them.
      for (let j = 0; j <= i; j++) {
        const value = (covariance[i * errorCount + j] ?? 0) - by * (gain[j] ?? 0);
        covariance[i * errorCount + j] = value;
        covariance[j * errorCount + i] = value;
      }
    }
  }
  return { motion: correctMotion({ ...motion, covariance }, error), logLikelihood };
}
