import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { DatedCheckpoint } from "./finish-rep.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { handOverShoulder } from "./lead-hand.ts";
import type { Movement, SwingPhase } from "./segment-reps.ts";
import { shaftAt } from "./shaft-at.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Which checkpoints of the movement under way were told, and since when the club stands still. */
export interface Passing {
  readonly told: readonly CheckpointId[];
  readonly last: CheckpointId | null;
  readonly stillSince: number | null;
}

export const startPassing: Passing = { told: [], last: null, stillSince: null };

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
): { readonly state: Passing; readonly output: LiveOutput } {
  const b = kept[kept.length - 1];
  const a = kept[kept.length - 2];
  if (!hasShaft(a) || !hasShaft(b)) {
    return {
      state: { ...state, stillSince: null },
      output: { phase: phaseOf(movement, false), checkpoint: state.last, passed: [] },
    };
  }
  const seconds = (b.t - a.t) / 1000;
  const rate = Math.abs(b.angle - a.angle) / seconds;
  const still = isStill(kept);
  const stillSince = still ? (state.stillSince ?? b.t) : null;
  if (movement === null) {
    const passing: Passing = { told: [], last: null, stillSince };
    return { state: passing, output: { phase: still ? "still" : "unknown", checkpoint: null, passed: [] } };
  }
  const slow = rate <= swingTuning.liveRate * Math.min(2, 1 / 60 / Math.max(seconds, 1e-3));
  const passed = crossingsBetween(a, b, movement).filter(({ checkpoint }) => !state.told.includes(checkpoint));
  const shown = slow ? passed.map((one) => ({ ...one, shaft: shaftAt([a, b], one.t, one.sd) })) : [];
  const held = still ? heldAt(b, movement) : null;
  const last = passed[passed.length - 1]?.checkpoint ?? held ?? state.last;
  return {
    state: { told: [...state.told, ...passed.map((one) => one.checkpoint)], last, stillSince },
    output: {
      phase: still && held !== null ? "hold" : phaseOf(movement, still),
      checkpoint: held ?? last,
      passed: shown,
    },
  };
}

function phaseOf(movement: Movement | null, still: boolean): SwingPhase {
  if (movement === null) return still ? "still" : "unknown";
  return movement.stage;
}

/** Whether swing angle and hands stood still over the last `stillTime`. */
function isStill(kept: readonly FollowedSample[]): boolean {
  const last = kept[kept.length - 1];
  if (last === undefined) return false;
  const first = kept.find((sample) => sample.t >= last.t - swingTuning.stillTime);
  if (!hasShaft(first) || !hasShaft(last)) return false;
  const seconds = (last.t - first.t) / 1000;
  if (seconds < (0.7 * swingTuning.stillTime) / 1000) return false;
  const from = first.shaft.grip;
  const to = last.shaft.grip;
  const moved = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
  return (
    Math.abs(last.angle - first.angle) < swingTuning.stillRate * seconds && moved < swingTuning.stillHands * seconds
  );
}

type WithShaft = FollowedSample & { readonly shaft: ShaftInWorld; readonly angle: number };

function hasShaft(sample: FollowedSample | undefined): sample is WithShaft {
  return sample !== undefined && sample.shaft !== null && sample.angle !== null;
}

const handAboveShoulder = (sample: FollowedSample): number | null =>
  sample.shaft === null || sample.leadShoulderZ === null ? null : handOverShoulder(sample.shaft, sample.leadShoulderZ);

const behindThigh = (sample: FollowedSample): number | null =>
  sample.shaft === null || sample.trailThighX === null ? null : sample.trailThighX.value - sample.shaft.grip.x;

const rise = (sample: FollowedSample): number | null =>
  sample.shaft === null ? null : anglesOf(sample.shaft.toHead).elevation;

function crossingsBetween(a: FollowedSample, b: FollowedSample, movement: Movement): DatedCheckpoint[] {
  const back = movement.stage === "back" && movement.tops.length === 0;
  const crossings = back
    ? [
        cross("takeaway", a, b, behindThigh, "up", 0.05),
        cross("shaft-level-back", a, b, rise, "up", 0.03),
        cross("arm-level-back", a, b, handAboveShoulder, "up", 0.04),
      ]
    : movement.stage === "down"
      ? [
          cross("arm-level-down", a, b, handAboveShoulder, "down", 0.04),
          cross("shaft-level-down", a, b, rise, "down", 0.03),
        ]
      : [];
  return crossings.flatMap((one) => (one === null ? [] : [one]));
}

/** `lastingSd`: one standard deviation of the quantity that neighbouring pictures share, in its unit. */
function cross(
  checkpoint: CheckpointId,
  a: FollowedSample,
  b: FollowedSample,
  quantity: (sample: FollowedSample) => number | null,
  way: "up" | "down",
  lastingSd: number,
): DatedCheckpoint | null {
  const before = quantity(a);
  const after = quantity(b);
  if (before === null || after === null) return null;
  const sign = way === "up" ? 1 : -1;
  if (sign * before >= 0 || sign * after < 0) return null;
  const t = a.t + ((0 - before) / (after - before)) * (b.t - a.t);
  const slope = Math.abs((after - before) / (b.t - a.t));
  return { checkpoint, t: milliseconds(t), sd: Math.min(500, lastingSd / Math.max(slope, 1e-6)), shaft: null };
}

function heldAt(sample: FollowedSample, movement: Movement): CheckpointId | null {
  const back = movement.stage === "back" && movement.tops.length === 0;
  const height = handAboveShoulder(sample);
  const elevation = rise(sample);
  if (height !== null && Math.abs(height) < swingTuning.holdNear.height)
    return back ? "arm-level-back" : "arm-level-down";
  if (elevation !== null && Math.abs(elevation) < swingTuning.holdNear.angle) {
    return back ? "shaft-level-back" : "shaft-level-down";
  }
  return null;
}
