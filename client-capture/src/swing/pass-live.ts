import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { crossingsLast, handAboveShoulder, rise } from "./crossings-last.ts";
import type { DatedCheckpoint } from "./finish-rep.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { hasShaft } from "./is-still.ts";
import { lately } from "./lately.ts";
import type { Movement, SwingPhase } from "./segment-reps.ts";
import { shaftAt } from "./shaft-at.ts";
import { slopeOf } from "./slope-of.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Which checkpoints of the movement under way were told. */
export interface Passing {
  readonly told: readonly CheckpointId[];
  readonly last: CheckpointId | null;
  /** The checkpoint that the club is held at, and when it last stood still there, milliseconds; null where it is at none. */
  readonly hold: { readonly at: CheckpointId; readonly stoodAt: number } | null;
}

export const startPassing: Passing = { told: [], last: null, hold: null };

interface LiveOutput {
  readonly phase: SwingPhase;
  readonly checkpoint: CheckpointId | null;
  readonly passed: readonly DatedCheckpoint[];
}

/**
 * Tells a checkpoint the moment the club has passed it, once a movement, and only where the club moves slowly enough for the
 * two neighbouring pictures to fix it; names the checkpoint that the club is held at.
 */
export function passLive(
  state: Passing,
  kept: readonly FollowedSample[],
  movement: Movement | null,
  still: boolean,
): { readonly state: Passing; readonly output: LiveOutput } {
  const b = kept[kept.length - 1];
  const a = kept[kept.length - 2];
  if (movement === null) {
    const isSeen = hasShaft(a) && hasShaft(b);
    return {
      state: startPassing,
      output: { phase: still && isSeen ? "still" : "unknown", checkpoint: null, passed: [] },
    };
  }
  const hold = b === undefined ? null : holdOn(state.hold, b, movement, still);
  const phase = hold === null ? movement.stage : "hold";
  if (!hasShaft(a) || !hasShaft(b)) {
    return { state: { ...state, hold }, output: { phase, checkpoint: hold?.at ?? state.last, passed: [] } };
  }
  const seconds = (b.t - a.t) / 1000;
  const samples = lately(kept, swingTuning.live.paceOver);
  const angles = samples.flatMap(({ t, angle }) => (angle === null ? [] : [{ t: t / 1000, value: angle }]));
  const rate = Math.abs(slopeOf(angles));
  const slow = rate <= swingTuning.live.rate * Math.min(2, 1 / 60 / Math.max(seconds, 1e-3));
  const passed = crossingsLast(samples, movement).filter(({ checkpoint }) => !state.told.includes(checkpoint));
  const known = slow ? passed.filter(({ sd }) => sd <= swingTuning.live.mostSd) : [];
  const shown = known.map((one) => ({ ...one, shaft: shaftAt(kept, one.t, one.sd) }));
  const last = passed[passed.length - 1]?.checkpoint ?? hold?.at ?? state.last;
  return {
    state: { told: [...state.told, ...passed.map((one) => one.checkpoint)], last, hold },
    output: { phase, checkpoint: hold?.at ?? last, passed: shown },
  };
}

/** Held on where the club stood a moment ago and is about there still: a club that is held is not seen to stand still in every picture. */
function holdOn(before: Passing["hold"], sample: FollowedSample, movement: Movement, still: boolean): Passing["hold"] {
  const { leavesAfter, leavesBeyond } = swingTuning.holdNear;
  if (before !== null && (farFrom(before.at, sample) ?? 0) < leavesBeyond) {
    if (still) return { ...before, stoodAt: sample.t };
    if (sample.t - before.stoodAt <= leavesAfter) return before;
  }
  const at = still ? heldAt(sample, movement) : null;
  return at === null ? null : { at, stoodAt: sample.t };
}

const backHolds: readonly CheckpointId[] = ["arm-level-back", "shaft-level-back"];
const downHolds: readonly CheckpointId[] = ["arm-level-down", "shaft-level-down"];

function heldAt(sample: FollowedSample, { stage, tops }: Movement): CheckpointId | null {
  const holds = stage === "back" && tops.length === 0 ? backHolds : downHolds;
  return holds.find((at) => (farFrom(at, sample) ?? Infinity) < 1) ?? null;
}

/** How far from a checkpoint, in times as far as a hold there begins at; null where it is not known. */
function farFrom(at: CheckpointId, sample: FollowedSample): number | null {
  const { angle, height } = swingTuning.holdNear;
  const isArmLevel = at === "arm-level-back" || at === "arm-level-down";
  const off = isArmLevel ? handAboveShoulder(sample) : rise(sample);
  return off === null ? null : Math.abs(off.value) / (isArmLevel ? height : angle);
}
