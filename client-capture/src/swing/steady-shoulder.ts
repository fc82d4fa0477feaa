import type { FollowedSample } from "./follow-swing.ts";
import { swingTuning } from "./swing-tuning.ts";
import type { Estimated } from "./swing-sample.ts";

/**
 * The lead shoulder's height at a time, steadied over a stretch of the swing (milliseconds): a straight line through the answers about it, the nearest counting
 * most. The pose model's error belongs to the posture and hardly differs from one answer to the next, but does from one part of the swing to another, while the
 * shoulder itself moves little and evenly. Null where too few answers lie near.
 */
export function steadyShoulder(
  samples: readonly FollowedSample[],
  within: { readonly from: number; readonly to: number },
): (t: number) => Estimated | null {
  const halfWidth = swingTuning.shoulderWindow * (within.to - within.from);
  const seen = samples.flatMap(({ t, leadShoulderZ }) =>
    leadShoulderZ === null || t < within.from || t > within.to ? [] : [{ t, ...leadShoulderZ }],
  );
  return (at) => {
    let [sum, sumT, sumTT, sumZ, sumTZ, sumSd] = [0, 0, 0, 0, 0, 0];
    let near = 0;
    for (const { t, value, sd } of seen) {
      const apart = (t - at) / halfWidth;
      const weight = 1 - Math.abs(apart);
      if (weight <= 0) continue;
      near++;
      sum += weight;
      sumT += weight * apart;
      sumTT += weight * apart * apart;
      sumZ += weight * value;
      sumTZ += weight * apart * value;
      sumSd += weight * sd;
    }
    const spread = sum * sumTT - sumT * sumT;
    if (near < 4 || spread < 1e-6 * sum * sum) return null;
    return { value: (sumZ * sumTT - sumT * sumTZ) / spread, sd: sumSd / sum };
  };
}
