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
}

export const startPassing: Passing = { told: [], last: null };

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
  if (!hasShaft(a) || !hasShaft(b)) {
    return {
      state,
      output: { phase: phaseOf(movement, false), checkpoint: state.last, passed: [] },
    };
  }
  const seconds = (b.t - a.t) / 1000;
  if (movement === null) {
    return { state: startPassing, output: { phase: still ? "still" : "unknown", checkpoint: null, passed: [] } };
  }
  const samples = lately(kept, swingTuning.live.paceOver);
  const angles = samples.flatMap(({ t, angle }) => (angle === null ? [] : [{ t: t / 1000, value: angle }]));
  const rate = Math.abs(slopeOf(angles));
  const slow = rate <= swingTuning.live.rate * Math.min(2, 1 / 60 / Math.max(seconds, 1e-3));
  const passed = crossingsLast(samples, movement).filter(({ checkpoint }) => !state.told.includes(checkpoint));
  const known = slow ? passed.filter(({ sd }) => sd <= swingTuning.live.mostSd) : [];
  const shown = known.map((one) => ({ ...one, shaft: shaftAt(kept, one.t, one.sd) }));
  const held = still ? heldAt(b, movement) : null;
  const last = passed[passed.length - 1]?.checkpoint ?? held ?? state.last;
  return {
    state: { told: [...state.told, ...passed.map((one) => one.checkpoint)], last },
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
