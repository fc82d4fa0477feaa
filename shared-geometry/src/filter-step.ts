import { at, errorCount, throughBlock, type Pace, type ShaftMotion } from "./filter-motion.ts";
import { predictMotion } from "./filter-predict.ts";
import type { Transition } from "./filter-transition.ts";
import { filterTuning } from "./filter-tuning.ts";
import { updateMotion } from "./filter-update.ts";
import type { Milliseconds } from "./units.ts";
import { cross, dot, normalise, type Vector } from "./vector.ts";
import type { WeighedLean } from "./weigh-leans.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** A motion carried on to a picture: what was expected there, how errors carried over, and what it is with the picture. */
export interface FilterStep {
  readonly expected: ShaftMotion;
  readonly carried: Transition;
  readonly motion: ShaftMotion;
}

/**
 * One step of the filter. `sight` null where nothing was seen; `lean` where the leans have just been weighed; `again` what an earlier answer tells: the pace on
 * both sides, and how much less the sight is to be trusted than it says.
 */
export function stepMotion(
  motion: ShaftMotion,
  t: Milliseconds,
  sight: ShaftInWorld | null,
  lean: WeighedLean | null,
  again: { readonly pace: Pace; readonly widen: number } | null = null,
): FilterStep {
  const { motion: foreseen, transition: carried } = predictMotion(motion, t, again?.pace ?? null);
  const expected = lean ? allowFor(foreseen, lean) : foreseen;
  if (!sight) return { expected, carried, motion: expected };
  const widen = (again?.widen ?? 1) * Math.max(1, (2 * filterTuning.errorsLast) / Math.max(carried.seconds, 1e-3));
  return { expected, carried, motion: updateMotion(expected, sight, widen) };
}

/** Beyond so many sds from the lean that is known, the motion was wrong about itself. */
const astray = 3;

/** How long ago it may have gone astray, seconds: what the miss means for the turn. */
const astrayFor = 0.2;

/** Widens a motion that has gone astray until the lean that is known is nothing unusual. */
function allowFor(motion: ShaftMotion, { node, toHead, sd }: WeighedLean): ShaftMotion {
  const axis = normalise(cross(motion.toHead, node.view.sight));
  if (!axis) return motion;
  const off = fromSight(motion.toHead, node.view.sight) - fromSight(toHead, node.view.sight);
  const variance = throughBlock(motion.covariance, at.direction, at.direction, axis) + sd * sd;
  if (off * off <= astray * astray * variance) return motion;
  const covariance = motion.covariance.slice();
  const parts = [axis.x, axis.y, axis.z];
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const square = off * off * (parts[i] ?? 0) * (parts[j] ?? 0);
      const direction = (at.direction + i) * errorCount + at.direction + j;
      const turn = (at.turn + i) * errorCount + at.turn + j;
      covariance[direction] = (covariance[direction] ?? 0) + square;
      covariance[turn] = (covariance[turn] ?? 0) + square / (astrayFor * astrayFor);
    }
  }
  return { ...motion, covariance };
}

const fromSight = (a: Vector, b: Vector): number => Math.acos(Math.min(1, Math.max(-1, dot(a, b))));
