import { Matrix } from "ml-matrix";
import type { Milliseconds } from "./units.ts";
import type { Point } from "./point.ts";
import type { Vector } from "./vector.ts";
import type { Direction } from "./world-shaft.ts";

/**
 * A shaft in motion. Its uncertainty is over small errors about it, fourteen of them, in this order: grip (3, metres), its velocity (3, m/s),
 * turn of the direction about the world's axes (3, radians), angular velocity (3, rad/s), depth bias (metres), length bias (metres).
 * A turn about the shaft itself means nothing and has no variance.
 */
export interface ShaftMotion {
  readonly t: Milliseconds;
  readonly grip: Point<"world">;
  readonly velocity: Vector;
  readonly toHead: Direction;
  /** World axes, rad/s, square to the shaft. */
  readonly turn: Vector;
  /** Stated depth less true depth of the hands, as far as it stays the same. */
  readonly depthBias: number;
  /** True grip-to-head length less the stated one. */
  readonly lengthBias: number;
  readonly covariance: Matrix;
}

export const errorCount = 14;
export const at = { grip: 0, velocity: 3, direction: 6, turn: 9, depthBias: 12, lengthBias: 13 } as const;

/** `turn x` as a matrix. */
export function crossMatrix({ x, y, z }: Vector): Matrix {
  return new Matrix([
    [0, -z, y],
    [z, 0, -x],
    [-y, x, 0],
  ]);
}

/** The part of space square to a unit direction. */
export function squareTo({ x, y, z }: Vector): Matrix {
  return new Matrix([
    [1 - x * x, -x * y, -x * z],
    [-y * x, 1 - y * y, -y * z],
    [-z * x, -z * y, 1 - z * z],
  ]);
}
