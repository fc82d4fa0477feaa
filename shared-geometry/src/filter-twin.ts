import { Matrix } from "ml-matrix";
import type { Camera } from "./camera.ts";
import { at, errorCount, type ShaftMotion } from "./filter-motion.ts";
import { along, cross, dot, normalise, scale, subtract, type Vector } from "./vector.ts";

/** The same motion with its lean towards or away from the lens reversed, and how many sds of the first it lies away (lean and its rate). */
export interface Twin {
  readonly motion: ShaftMotion;
  readonly sds: number;
}

/**
 * The motion mirrored in the plane square to the line of sight through the middle of the shaft: it looks nearly the same in the picture.
 * Null where the shaft points at the lens, which has no twin.
 */
export function twinOf(motion: ShaftMotion, camera: Camera, length: number): Twin | null {
  const sight = normalise(subtract(along(motion.grip, motion.toHead, length / 2), camera.position));
  if (!sight) return null;
  const lean = dot(motion.toHead, sight);
  const axis = normalise(cross(motion.toHead, sight));
  if (!axis || Math.abs(lean) > 0.985) return null;
  const toHead = mirror(motion.toHead, sight);
  const turn = scale(mirror(motion.turn, sight), -1);
  const rate = dot(motion.turn, axis);
  const mirrored = Matrix.eye(errorCount);
  const flip = Matrix.eye(3).sub(
    Matrix.columnVector([sight.x, sight.y, sight.z])
      .mmul(Matrix.rowVector([sight.x, sight.y, sight.z]))
      .mul(2),
  );
  mirrored.setSubMatrix(Matrix.mul(flip, -1), at.direction, at.direction);
  mirrored.setSubMatrix(Matrix.mul(flip, -1), at.turn, at.turn);
  return {
    motion: {
      ...motion,
      toHead,
      turn: along(turn, toHead, -dot(turn, toHead)),
      covariance: mirrored.mmul(motion.covariance).mmul(mirrored),
    },
    sds: distance(motion.covariance, axis, 2 * Math.asin(lean), 2 * rate),
  };
}

const mirror = (v: Vector, normal: Vector): Vector => along(v, normal, -2 * dot(v, normal));

/** Mahalanobis distance of a turn about an axis and its rate. */
function distance(covariance: Matrix, axis: Vector, turn: number, rate: number): number {
  const about = (row: number, column: number): number => {
    const unit = [axis.x, axis.y, axis.z];
    let sum = 0;
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) sum += (unit[i] ?? 0) * (unit[j] ?? 0) * covariance.get(row + i, column + j);
    }
    return sum;
  };
  const a = about(at.direction, at.direction);
  const b = about(at.direction, at.turn);
  const c = about(at.turn, at.turn);
  const determinant = a * c - b * b;
  if (!(determinant > 0)) return Infinity;
  return Math.sqrt(Math.max(0, (c * turn * turn - 2 * b * turn * rate + a * rate * rate) / determinant));
}
