import { normalBelow } from "@overcue/shared-geometry/normal-probability";
import type { CarryOver } from "../figures/carry-over.ts";
import type { StageRules } from "./stages.ts";

/** One checkpoint of a finished block: each rep's carry-over (null where it was not read), and the block's own. */
export interface BlockColumn {
  readonly reps: readonly (CarryOver | null)[];
  readonly block: CarryOver | null;
}

export type Judgement = "pass" | "stay" | "fall-back";

/**
 * What a finished block means for the stage. Pass: at every checkpoint that wants a change, the expected number of reps at the pass mark
 * (each rep's odds by its own error, so an unsure one counts as a fraction) rounds to the number asked for. Fall back: the mean of the blocks' carry-over is
 * under the mark. No checkpoint that wants a change: pass, there is nothing to change.
 */
export function judgeBlock(columns: readonly BlockColumn[], rules: StageRules): Judgement {
  if (columns.every((column) => expectedThere(column.reps, rules.passAt) >= rules.passReps - 0.5)) return "pass";
  const reached = columns.flatMap(({ block }) => (block ? [block.value] : []));
  const mean = reached.reduce((sum, value) => sum + value, 0) / reached.length;
  return reached.length > 0 && mean < rules.fallBackUnder ? "fall-back" : "stay";
}

function expectedThere(reps: readonly (CarryOver | null)[], mark: number): number {
  return reps.reduce((sum, rep) => sum + (rep ? oddsAtLeast(rep, mark) : 0), 0);
}

function oddsAtLeast({ value, sd }: CarryOver, mark: number): number {
  if (sd === 0) return value >= mark ? 1 : 0;
  return normalBelow((value - mark) / sd);
}
