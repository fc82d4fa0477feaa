import { milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftEvidence } from "../shaft/track-shaft.ts";
import type { Configuration } from "./configuration.ts";
import { goOverAgain } from "./go-over-again.ts";
import type { FinishedRep } from "../swing/finish-rep.ts";
import { repReadings, type RepReading } from "./rep-readings.ts";
import type { StepOutput } from "./step.ts";

/** Live pictures are kept this long for it, milliseconds: a slow rehearsal that is held for half a minute fits in. */
export const memoryForRep = milliseconds(50_000);
/** Gone over is what was seen from so long before the rep on, milliseconds: its rest at the ball, and more than a first pass misdates its start by. */
const beforeStart = 10_000;

/**
 * The rep that the newest picture ended, as the `first` pass had it, gone over once more with all of its pictures that are kept. `evidence` and `outputs` are of the same pictures in the same order.
 */
export function finishLiveRep(
  first: FinishedRep,
  evidence: readonly ShaftEvidence[],
  outputs: readonly StepOutput[],
  configuration: Configuration,
): RepReading {
  const newest = outputs[outputs.length - 1]?.t ?? 0;
  const from = Math.max(newest - memoryForRep, first.startedAt - beforeStart);
  const at = outputs.findIndex(({ t }) => t >= from);
  const { reps } = goOverAgain(evidence.slice(at), outputs.slice(at), configuration);
  return repReadings(goneOver(first, reps), configuration);
}

/**
 * A rep as the second pass has it; where that finds no rep there, the first pass's stands. Two passes date a rep's end a second apart and more, but no rep sets off before the ball of the one
 * before.
 */
export const goneOver = (first: FinishedRep, second: readonly FinishedRep[]): FinishedRep =>
  second.find((rep) => rep.startedAt < impactOf(first) && first.startedAt < impactOf(rep)) ?? first;

const impactOf = ({ checkpoints, endedAt }: FinishedRep): number =>
  checkpoints.find(({ checkpoint }) => checkpoint === "impact")?.t ?? endedAt;
