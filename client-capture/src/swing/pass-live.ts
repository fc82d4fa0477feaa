import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { DatedCheckpoint } from "./finish-rep.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { hasShaft, isStill } from "./is-still.ts";
import { handOverShoulder } from "./lead-hand.ts";
import type { Movement, SwingPhase } from "./segment-reps.ts";
import { shaftAt } from "./shaft-at.ts";
import { slopeOf } from "./slope-of.ts";
import type { Estimated } from "./swing-sample.ts";
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
  const lately = kept.slice(kept.findIndex(({ t }) => t >= b.t - swingTuning.livePaceOver));
  const angles = lately.flatMap(({ t, angle }) => (angle === null ? [] : [{ t: t / 1000, value: angle }]));
  const rate = Math.abs(slopeOf(angles));
  const still = isStill(kept);
  const stillSince = still ? (state.stillSince ?? b.t) : null;
  if (movement === null) {
    const passing: Passing = { told: [], last: null, stillSince };
    return { state: passing, output: { phase: still ? "still" : "unknown", checkpoint: null, passed: [] } };
  }
  const slow = rate <= swingTuning.liveRate * Math.min(2, 1 / 60 / Math.max(seconds, 1e-3));
  const passed = crossingsLast(lately, movement).filter(({ checkpoint }) => !state.told.includes(checkpoint));
  const known = slow ? passed.filter(({ sd }) => sd <= swingTuning.liveSd) : [];
  const shown = known.map((one) => ({ ...one, shaft: shaftAt(kept, one.t, one.sd) }));
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

const varianceSd = ({ covariance }: ShaftInWorld, place: number): number =>
  Math.sqrt(Math.max(0, covariance[place] ?? 0));

/** The lead hand over the lead shoulder, metres. */
const handAboveShoulder = ({ shaft, leadShoulderZ }: FollowedSample): Estimated | null =>
  shaft === null || leadShoulderZ === null
    ? null
    : {
        value: handOverShoulder(shaft, leadShoulderZ),
        sd: Math.hypot(
          varianceSd(shaft, 12),
          leadShoulderZ.sd,
          swingTuning.lasting.shoulder,
          swingTuning.lasting.hands,
        ),
      };

/** The hands further from the target than the trail thigh, metres. */
const behindThigh = ({ shaft, trailThighX }: FollowedSample): Estimated | null =>
  shaft === null || trailThighX === null
    ? null
    : {
        value: trailThighX.value - shaft.grip.x,
        sd: Math.hypot(varianceSd(shaft, 0), trailThighX.sd, swingTuning.lasting.thigh, swingTuning.lasting.hands),
      };

/** The shaft's elevation, radians. */
const rise = ({ shaft }: FollowedSample): Estimated | null =>
  shaft === null
    ? null
    : { value: anglesOf(shaft.toHead).elevation, sd: Math.hypot(varianceSd(shaft, 24), swingTuning.lastingElevation) };

function crossingsLast(lately: readonly FollowedSample[], movement: Movement): DatedCheckpoint[] {
  const { poseAge } = swingTuning;
  const back = movement.stage === "back" && movement.tops.length === 0;
  const crossings = back
    ? [
        crossLast("takeaway", lately, behindThigh, "up", poseAge),
        crossLast("shaft-level-back", lately, rise, "up"),
        crossLast("arm-level-back", lately, handAboveShoulder, "up", poseAge),
      ]
    : movement.stage === "down"
      ? [
          crossLast("arm-level-down", lately, handAboveShoulder, "down", poseAge),
          crossLast("shaft-level-down", lately, rise, "down"),
        ]
      : [];
  return crossings.flatMap((one) => (one === null ? [] : [one]));
}

/**
 * Null where the quantity did not pass zero between the last two samples, or goes the other way on the whole. How fast it goes there is taken over the last `livePaceOver`, for of two pictures it was their noise that had
 * them lie on either side. `leastSd`: milliseconds by which the quantity itself may come late.
 */
function crossLast(
  checkpoint: CheckpointId,
  lately: readonly FollowedSample[],
  quantity: (sample: FollowedSample) => Estimated | null,
  way: "up" | "down",
  leastSd = 0,
): DatedCheckpoint | null {
  const sign = way === "up" ? 1 : -1;
  const series = lately.flatMap((sample) => {
    const told = quantity(sample);
    return told === null ? [] : [{ t: sample.t, value: sign * told.value, sd: told.sd }];
  });
  const after = series[series.length - 1];
  const before = series[series.length - 2];
  if (before === undefined || after === undefined || after.t !== lately[lately.length - 1]?.t) return null;
  if (before.value >= 0 || after.value < 0) return null;
  const t = before.t - (before.value / (after.value - before.value)) * (after.t - before.t);
  const slope = series.length < 3 ? 0 : slopeOf(series);
  return slope <= 0 ? null : { checkpoint, t: milliseconds(t), sd: Math.hypot(leastSd, after.sd / slope), shaft: null };
}

function heldAt(sample: FollowedSample, movement: Movement): CheckpointId | null {
  const back = movement.stage === "back" && movement.tops.length === 0;
  const height = handAboveShoulder(sample)?.value ?? null;
  const elevation = rise(sample)?.value ?? null;
  if (height !== null && Math.abs(height) < swingTuning.holdNear.height)
    return back ? "arm-level-back" : "arm-level-down";
  if (elevation !== null && Math.abs(elevation) < swingTuning.holdNear.angle) {
    return back ? "shaft-level-back" : "shaft-level-down";
  }
  return null;
}
