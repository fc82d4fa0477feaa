import type { Camera } from "./camera.ts";
import { filterTuning } from "./filter-tuning.ts";
import { leanHabit } from "./lean-habit.ts";
import type { LiftObservation } from "./lift-observation.ts";
import type { Milliseconds } from "./units.ts";
import { leaning, spreadAt, type ShaftView } from "./view-shaft.ts";

/** The leans that are told apart, radians from square towards the line of sight: middles of equal cells from -90 to 90 degrees. */
export const leanCount = 45;
export const leanStep = Math.PI / leanCount;
export const leanOf = (cell: number): number => (cell + 0.5) * leanStep - Math.PI / 2;

/** One picture's shaft under every lean that it might have. */
export interface LeanNode {
  readonly t: Milliseconds;
  readonly view: ShaftView;
  /** Unit direction from grip to head, x, y, z in turn, a cell. */
  readonly directions: Float64Array;
  /** How likely each lean is by this picture alone, unnormalised. */
  readonly weights: Float64Array;
  /** How fast the shaft turns in the picture about this time, rad/s: no more than it really turns. */
  readonly pace: number;
}

/**
 * Weighs every lean by the length that is seen and by the habits of a swing over `seconds` (the time that this picture speaks for).
 * One picture in `wrongHead` has its head end anywhere. Camera and observation are a right-handed golfer's.
 */
export function leanNode(
  camera: Camera,
  observation: LiftObservation,
  view: ShaftView,
  length: number,
  seconds: number,
): LeanNode {
  const directions = new Float64Array(3 * leanCount);
  const weights = new Float64Array(leanCount);
  const sd = spreadSd(camera, observation, length, view);
  for (let cell = 0; cell < leanCount; cell++) {
    const lean = leanOf(cell);
    const direction = leaning(view, lean);
    directions[3 * cell] = direction.x;
    directions[3 * cell + 1] = direction.y;
    directions[3 * cell + 2] = direction.z;
    const habit = seconds * leanHabit(view.grip, direction, length, observation.depth.sd);
    weights[cell] = Math.exp(habit) * likelihood(view, lean, length, sd);
  }
  return { t: observation.t, view, directions, weights, pace: 0 };
}

function likelihood(view: ShaftView, lean: number, length: number, sd: number): number {
  if (view.spread === null) return 1;
  const slope =
    (spreadAt(lean + leanStep / 2, length, view.distance) - spreadAt(lean - leanStep / 2, length, view.distance)) /
    Math.sqrt(12);
  const variance = sd * sd + slope * slope;
  const miss = view.spread - spreadAt(lean, length, view.distance);
  const { wrongHead } = filterTuning;
  return ((1 - wrongHead) * Math.exp((-0.5 * miss * miss) / variance)) / Math.sqrt(variance) + wrongHead;
}

/** How far the angle under which the shaft is seen may be off, radians: places along the line, the club's length, the depth. */
function spreadSd(
  camera: Camera,
  { gripAlongSd, head, depth }: LiftObservation,
  length: number,
  view: ShaftView,
): number {
  const share = Math.hypot(filterTuning.lengthBiasSd / length, depth.sd / view.distance);
  return Math.hypot(gripAlongSd / camera.focal, (head?.alongSd ?? 0) / camera.focal, share * (view.spread ?? 0));
}
