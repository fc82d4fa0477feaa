import type { ShaftEvidence } from "../shaft/track-shaft.ts";
import type { Configuration } from "./configuration.ts";
import { goOverAgain } from "./go-over-again.ts";
import type { FinishedRep } from "../swing/finish-rep.ts";
import { repReadings, type RepReading } from "./rep-readings.ts";
import type { StepOutput } from "./step.ts";

/** A rep of the second pass that ends this near to the first pass's is the same one, milliseconds. */
const sameEnd = 700;

/**
 * The rep that the newest picture ended, as the `first` pass had it, gone over once more with all of its pictures. Where the second pass
 * finds no rep there, the first pass's stands. `evidence` and `outputs` are of the same pictures in the same order.
 */
export function finishLiveRep(
  first: FinishedRep,
  evidence: readonly ShaftEvidence[],
  outputs: readonly StepOutput[],
  configuration: Configuration,
): RepReading {
  const again = goOverAgain(evidence, outputs, configuration);
  const same = again.reps.find((rep) => Math.abs(rep.endedAt - first.endedAt) < sameEnd);
  return repReadings(same ?? first, configuration);
}
