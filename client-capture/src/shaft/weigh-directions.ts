import type { LineSweep } from "./line-sweep.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Likelihood of the picture for each direction of the sweep, against "no shaft there" as 1. */
export function weighDirections(sweep: LineSweep, tuning: ShaftTuning, into: Float32Array): void {
  for (let i = 0; i < sweep.directions; i++) {
    const gain = tuning.evidenceWeight * ((sweep.evidence[i] as number) - tuning.clutterEvidence);
    into[i] = 1 - tuning.seenChance + tuning.seenChance * Math.exp(Math.min(gain, tuning.evidenceCap));
  }
}
