import type { Configuration } from "./configuration.ts";
import type { ClipAnswer } from "./finish-clip.ts";
import { finishLiveRep } from "./finish-live-rep.ts";
import type { StepOutput, StepState } from "./step.ts";
import { toldLive } from "./told-live.ts";

/**
 * A whole show: its reps as they go into the book live, each gone over when it has ended, with the pictures that are kept by then. Needs a state that was started to keep everything, and its
 * outputs from the first picture on.
 */
export function finishShow(state: StepState, outputs: readonly StepOutput[], configuration: Configuration): ClipAnswer {
  const { evidence } = state.shaft;
  const reps = outputs.flatMap(({ swing }, at) =>
    swing.finished === null
      ? []
      : [finishLiveRep(swing.finished, evidence.slice(0, at + 1), outputs.slice(0, at + 1), configuration)],
  );
  return { frames: [], reps, live: toldLive(outputs, configuration) };
}
