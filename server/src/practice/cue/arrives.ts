import type { Metres } from "@overcue/shared-geometry/units";
import { practiceSettings } from "../settings.ts";
import { share, type Share } from "../units.ts";

/**
 * How much of the cue arrives in reality, for this golfer at this checkpoint: metres reached per metre felt, both counted from the baseline.
 * A normal belief with one standard deviation. (Carry-over per centimetre of cue is this divided by the wanted change in centimetres.)
 */
export interface Arrives {
  readonly mean: Share;
  readonly sd: Share;
  /** Blocks that it rests on; 0 is the belief before any. */
  readonly blocks: number;
}

/** The belief before the first block. */
export const arrivesAtFirst: Arrives = {
  mean: share(practiceSettings.cue.priorArrives),
  sd: share(practiceSettings.cue.priorArrivesSd),
  blocks: 0,
};

/**
 * One step of a Kalman filter on a random walk (Bayes' rule for normal beliefs): the belief spreads by the drift between blocks, then takes in what this block
 * brought. `felt` and `reached` are metres from the baseline, signed; `reachedSd` is the standard error of `reached`.
 * A block without a felt change (0) says nothing, and only the drift is added.
 */
export function updateArrives(
  before: Arrives,
  block: { readonly felt: Metres; readonly reached: Metres; readonly reachedSd: Metres },
): Arrives {
  const drift = before.blocks === 0 ? 0 : practiceSettings.cue.driftSd;
  const variance = before.sd ** 2 + drift ** 2;
  if (block.felt === 0) return { ...before, sd: share(Math.sqrt(variance)) };
  const seen = block.reached / block.felt;
  const seenVariance = (block.reachedSd / block.felt) ** 2;
  const gain = variance / (variance + seenVariance);
  return {
    mean: share(before.mean + gain * (seen - before.mean)),
    sd: share(Math.sqrt(variance * (1 - gain))),
    blocks: before.blocks + 1,
  };
}
