import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { crossingsLast } from "./crossings-last.ts";
import type { DatedCheckpoint } from "./finish-rep.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { holdOn, type Hold } from "./holds.ts";
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
  /** The one under way, null where the club is held at no checkpoint, and those that are over. */
  readonly hold: Hold | null;
  readonly held: readonly Hold[];
}

export const startPassing: Passing = { told: [], last: null, hold: null, held: [] };

export const holdsOf = ({ hold, held }: Passing): readonly Hold[] => (hold === null ? held : [...held, hold]);

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
  const held = hold?.from === state.hold?.from ? state.held : holdsOf(state);
  const phase = hold === null ? movement.stage : "hold";
  if (!hasShaft(a) || !hasShaft(b)) {
    return { state: { ...state, hold, held }, output: { phase, checkpoint: hold?.at ?? state.last, passed: [] } };
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
    state: { told: [...state.told, ...passed.map((one) => one.checkpoint)], last, hold, held },
    output: { phase, checkpoint: hold?.at ?? last, passed: shown },
  };
}
