import type { Metres } from "@overcue/shared-geometry/units";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { finishRep, type DatedCheckpoint, type FinishedRep } from "./finish-rep.ts";
import { followSwing, startUnrolling, type FollowedSample, type Unrolling } from "./follow-swing.ts";
import { holdsOf, passLive, startPassing, type Passing } from "./pass-live.ts";
import {
  segmentAtEnd,
  segmentReps,
  startSegmenting,
  type Movement,
  type Refusal,
  type Segmenting,
  type SwingPhase,
} from "./segment-reps.ts";
import { isStill } from "./is-still.ts";
import type { SwingSample } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

export interface SwingClockState {
  readonly unrolling: Unrolling;
  readonly segmenting: Segmenting;
  readonly passing: Passing;
  /** The samples that a rep under way may still need, oldest first. */
  readonly kept: readonly FollowedSample[];
  /** From the middle of the grip to the club head, metres: what the head's place is worked out with. */
  readonly gripToHead: Metres;
}

export interface SwingClockOutput {
  readonly phase: SwingPhase;
  /** The checkpoint last passed in the movement under way, or the one that is held. */
  readonly checkpoint: CheckpointId | null;
  /** Checkpoints passed just now, slowly enough to be read live. */
  readonly passed: readonly DatedCheckpoint[];
  readonly finished: FinishedRep | null;
  readonly refused: Refusal | null;
}

export function startSwingClock(gripToHead: Metres): SwingClockState {
  return { unrolling: startUnrolling, segmenting: startSegmenting, passing: startPassing, kept: [], gripToHead };
}

/**
 * The stage that finds reps and their checkpoints. Samples come in order of time; one that does not is left out.
 * `passed` is told live and once; the finished rep's checkpoints come from a fit through the whole rep and replace them.
 */
export function runSwingClock(
  state: SwingClockState,
  sample: SwingSample,
): { readonly state: SwingClockState; readonly output: SwingClockOutput } {
  const last = state.kept[state.kept.length - 1];
  if (last !== undefined && sample.t <= last.t) return { state, output: quiet };
  const followed = followSwing(state.unrolling, sample);
  const all = [...state.kept, followed.output];
  const still = isStill(all);
  const segmented = segmentReps(state.segmenting, followed.output, still);
  // The movement that ends with this sample still needs what was kept for it.
  const kept = neededOf(all, segmented.state, segmented.state.movement ?? state.segmenting.movement);
  const live = passLive(state.passing, kept, segmented.state.movement, still);
  const over =
    segmented.verdict === null
      ? null
      : "segment" in segmented.verdict
        ? finishRep(kept, segmented.verdict.segment, state.gripToHead, holdsOf(state.passing))
        : segmented.verdict;
  return {
    state: { ...state, unrolling: followed.state, segmenting: segmented.state, passing: live.state, kept },
    output: {
      ...live.output,
      finished: over !== null && "rep" in over ? over.rep : null,
      refused: over !== null && "refused" in over ? over.refused : null,
    },
  };
}

/** The rep that the samples end in: the club has passed the ball, but its follow-through is not over. Null where there is none. */
export function endSwingClock({ segmenting, passing, kept, gripToHead }: SwingClockState): FinishedRep | null {
  const last = kept[kept.length - 1];
  const segment = last === undefined ? null : segmentAtEnd(segmenting, last.t);
  const over = segment === null ? null : finishRep(kept, segment, gripToHead, holdsOf(passing));
  return over !== null && "rep" in over ? over.rep : null;
}

const quiet: SwingClockOutput = { phase: "unknown", checkpoint: null, passed: [], finished: null, refused: null };

/** What the movement under way needs, or the last few seconds where there is none. */
function neededOf(
  samples: readonly FollowedSample[],
  { stood }: Segmenting,
  movement: Movement | null,
): readonly FollowedSample[] {
  const { longestBack, longestHeldRep, rest } = swingTuning;
  const now = samples[samples.length - 1]?.t ?? 0;
  const from =
    movement === null
      ? now - Math.min(longestBack + stood, longestHeldRep) - rest.heldBefore
      : movement.leftLowAt - rest.heldBefore;
  return samples.slice(samples.findIndex(({ t }) => t >= from));
}
