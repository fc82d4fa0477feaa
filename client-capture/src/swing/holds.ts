import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointTime } from "./checkpoint-time.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { handAboveShoulder, rise } from "./live-quantities.ts";
import { goesBack, type Movement } from "./segment-reps.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Where the club was held to be looked at: first and last moment that it stood still there, milliseconds. */
export interface Hold {
  readonly at: CheckpointId;
  readonly from: number;
  readonly to: number;
}

/** The hold that the newest sample is in; `before`: the one that the sample before it was in. A club that is held is not seen to stand still in every picture: it is on where it stood a moment ago and is about there still. */
export function holdOn(before: Hold | null, sample: FollowedSample, movement: Movement, still: boolean): Hold | null {
  const { leavesAfter, leavesBeyond } = swingTuning.holdNear;
  if (before !== null && (farFrom(before.at, sample) ?? 0) < leavesBeyond) {
    if (still) return { ...before, to: sample.t };
    if (sample.t - before.to <= leavesAfter) return before;
  }
  const at = still ? heldAt(sample, movement) : null;
  return at === null ? null : { at, from: sample.t - swingTuning.stillTime, to: sample.t };
}

const backHolds: readonly CheckpointId[] = ["arm-level-back", "shaft-level-back"];
const downHolds: readonly CheckpointId[] = ["arm-level-down", "shaft-level-down"];

function heldAt(sample: FollowedSample, movement: Movement): CheckpointId | null {
  const holds = goesBack(movement) ? backHolds : downHolds;
  return holds.find((at) => (farFrom(at, sample) ?? Infinity) < 1) ?? null;
}

/** How far from a checkpoint, in times as far as a hold there begins at; null where it is not known. */
function farFrom(at: CheckpointId, sample: FollowedSample): number | null {
  const { angle, height } = swingTuning.holdNear;
  const isArmLevel = at === "arm-level-back" || at === "arm-level-down";
  const off = isArmLevel ? handAboveShoulder(sample) : rise(sample);
  return off === null ? null : Math.abs(off.value) / (isArmLevel ? height : angle);
}

/**
 * The middle of the hold for a checkpoint that the club was held at, since which moment of it was the one nobody can tell, nor need: the club is the same in all of them. Others, and one
 * whose moment is sure, stay as they are.
 */
export function datedByHold(time: CheckpointTime, holds: readonly Hold[]): CheckpointTime {
  const { leavesAfter, sureSd, mostSds } = swingTuning.holdNear;
  if (time.sd < sureSd) return time;
  const apart = Math.max(leavesAfter, mostSds * time.sd);
  const [longest] = holds
    .filter(({ at, from, to }) => at === time.checkpoint && time.t > from - apart && time.t < to + apart)
    .toSorted((a, b) => b.to - b.from - (a.to - a.from));
  if (longest === undefined) return time;
  const { from, to } = longest;
  return { ...time, t: milliseconds((from + to) / 2), sd: (to - from) / 4 };
}
