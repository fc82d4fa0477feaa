import type { ShaftTuning } from "./shaft-tuning.ts";

/** Likelihood of the picture for each direction of the sweep, against "no shaft there" as 1. */
export function weighDirections(evidence: Float32Array, tuning: ShaftTuning, into: Float32Array): void {
  for (let i = 0; i < evidence.length; i++) {
    const gain = tuning.evidenceWeight * ((evidence[i] as number) - tuning.clutterEvidence);
    into[i] = 1 - tuning.seenChance + tuning.seenChance * Math.exp(Math.min(gain, tuning.evidenceCap));
  }
}
