import type { Camera } from "./camera.ts";
import { at, errorCount, throughBlock, type ShaftMotion } from "./filter-motion.ts";
import { leanForSpread } from "./lean-posterior.ts";
import { leaning, spreadAt, widestLean } from "./view-shaft.ts";
import { along, cross, dot, lengthOf, normalise, scale, subtract, type Vector } from "./vector.ts";

/** The same motion with its lean towards or away from the lens reversed, and how many sds of the first it lies away (lean and its rate). */
export interface Twin {
  readonly motion: ShaftMotion;
  readonly sds: number;
}

/** Beyond this share of the shaft along the line of sight it points at the lens, and its mirrored lean is no near neighbour. */
const greatestLean = 0.9995;

/**
 * The motion mirrored in the plane square to the line of sight through the middle of the shaft: it looks the same in the picture for now.
 * Null where the shaft points at the lens or away from it.
 */
export function twinOf(motion: ShaftMotion, camera: Camera, length: number): Twin | null {
  const toGrip = subtract(motion.grip, camera.position);
  const sight = normalise(toGrip);
  const normal = normalise(subtract(along(motion.grip, motion.toHead, length / 2), camera.position));
  const square = sight && normalise(along(motion.toHead, sight, -dot(motion.toHead, sight)));
  if (!sight || !normal || !square) return null;
  const lean = dot(motion.toHead, normal);
  const axis = normalise(cross(motion.toHead, normal));
  if (!axis || Math.abs(lean) > greatestLean) return null;
  const distance = lengthOf(toGrip);
  const own = Math.atan2(dot(motion.toHead, sight), dot(motion.toHead, square));
  const spread = spreadAt(own, length, distance);
  const other = leanForSpread(own > widestLean(length, distance) ? -1 : 1, spread, length, distance);
  const toHead = leaning({ sight, square }, other);
  const turn = scale(mirror(motion.turn, normal), -1);
  const covariance = mirrorCovariance(motion.covariance, normal);
  loosen(covariance, at.direction, looserDirection, toHead);
  loosen(covariance, at.turn, looserTurn + looserTurnPerRate * lengthOf(motion.turn), toHead);
  return {
    motion: { ...motion, toHead, turn: along(turn, toHead, -dot(turn, toHead)), covariance },
    sds: distanceInSds(motion.covariance, axis, 2 * Math.asin(lean), 2 * dot(motion.turn, axis)),
  };
}

/** A mirrored motion is a guess: one sd added to its direction (radians) and to its turn (rad/s, and for each rad/s). */
const looserDirection = 0.05;
const looserTurn = 0.5;
const looserTurnPerRate = 0.3;

function loosen(covariance: Float64Array, first: number, sd: number, { x, y, z }: Vector): void {
  const unit = [x, y, z];
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const index = (first + i) * errorCount + first + j;
      const square = (i === j ? 1 : 0) - (unit[i] ?? 0) * (unit[j] ?? 0);
      covariance[index] = (covariance[index] ?? 0) + sd * sd * square;
    }
  }
}

const mirror = (v: Vector, normal: Vector): Vector => along(v, normal, -2 * dot(v, normal));

/** Turns in a mirror: reversed, but for their part along the mirror's normal. */
function mirrorCovariance(covariance: Float64Array, { x, y, z }: Vector): Float64Array {
  const flip = [
    2 * x * x - 1,
    2 * x * y,
    2 * x * z,
    2 * y * x,
    2 * y * y - 1,
    2 * y * z,
    2 * z * x,
    2 * z * y,
    2 * z * z - 1,
  ];
  const mirrored = covariance.slice();
  const alongRows = (rowStep: number, columnStep: number): void => {
    for (const first of [at.direction, at.turn]) {
      for (let other = 0; other < errorCount; other++) {
        const read = [0, 1, 2].map((i) => mirrored[(first + i) * rowStep + other * columnStep] ?? 0);
        for (let i = 0; i < 3; i++) {
          let sum = 0;
          for (let j = 0; j < 3; j++) sum += (flip[3 * i + j] ?? 0) * (read[j] ?? 0);
          mirrored[(first + i) * rowStep + other * columnStep] = sum;
        }
      }
    }
  };
  alongRows(errorCount, 1);
  alongRows(1, errorCount);
  return mirrored;
}

/** Mahalanobis distance of a turn about an axis and its rate. */
function distanceInSds(covariance: Float64Array, axis: Vector, turn: number, rate: number): number {
  const a = throughBlock(covariance, at.direction, at.direction, axis);
  const b = throughBlock(covariance, at.direction, at.turn, axis);
  const c = throughBlock(covariance, at.turn, at.turn, axis);
  const determinant = a * c - b * b;
  if (!(determinant > 0)) return Infinity;
  return Math.sqrt(Math.max(0, (c * turn * turn - 2 * b * turn * rate + a * rate * rate) / determinant));
}
