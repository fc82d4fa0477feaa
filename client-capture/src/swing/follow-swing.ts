import { radians, type Radians } from "@overcue/shared-geometry/units";
import { swingAngle, swingAngleSd, unrollSwingAngle } from "./swing-angle.ts";
import type { SwingSample } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

/** A sample with its unrolled swing angle; null where the shaft was not known or had none. */
export interface FollowedSample extends SwingSample {
  readonly angle: Radians | null;
  readonly angleSd: number;
}

/** What unrolling needs to remember. */
export interface Unrolling {
  readonly angle: Radians | null;
  readonly t: number;
  /** Height of the hands when the club last hung low, metres. */
  readonly lowHands: number | null;
}

export const startUnrolling: Unrolling = { angle: null, t: -Infinity, lowHands: null };

/**
 * Follows the swing angle through more than half a turn. A club that plainly hangs low with low hands starts the count anew, so
 * that a slip over a gap lasts no longer than the gap.
 */
export function followSwing(
  state: Unrolling,
  sample: SwingSample,
): { readonly state: Unrolling; readonly output: FollowedSample } {
  const raw = sample.shaft === null ? null : swingAngle(sample.shaft.toHead);
  if (raw === null || sample.shaft === null) return { state, output: { ...sample, angle: null, angleSd: Infinity } };
  const handsZ = sample.shaft.grip.z;
  const hangs = Math.abs(raw) < swingTuning.lowClub && handsZ < (state.lowHands ?? 1) + 0.2;
  const gone = sample.t - state.t > swingTuning.longestGap;
  const angle = hangs || state.angle === null || gone ? raw : unrollSwingAngle(state.angle, raw);
  // Beyond a full top (three quarters of a turn and some) or a full finish the count has slipped by a turn.
  const mended = angle > 5.6 ? radians(angle - 2 * Math.PI) : angle < -5.6 ? radians(angle + 2 * Math.PI) : angle;
  return {
    state: {
      angle: mended,
      t: sample.t,
      lowHands: hangs ? (state.lowHands === null ? handsZ : 0.9 * state.lowHands + 0.1 * handsZ) : state.lowHands,
    },
    output: { ...sample, angle: mended, angleSd: swingAngleSd(sample.shaft) },
  };
}
