import type { Milliseconds } from "./units.ts";
import type { Point } from "./point.ts";
import type { Vector } from "./vector.ts";
import type { Direction } from "./world-shaft.ts";

/** How fast a swing goes about a time: turn of the shaft, rad/s, and speed of the hands, m/s. */
export interface Pace {
  readonly turn: number;
  readonly hands: number;
}

/**
 * A shaft in motion. Its uncertainty is over small errors about it, twelve of them, in this order: grip (3, metres), its velocity (3, m/s),
 * turn of the direction about the world's axes (3, radians), angular velocity (3, rad/s). A turn about the shaft itself means nothing and has no
 * variance. Errors that stay the same through a rep (camera, most of the depth, club length) are not in here: they are added to the answer.
 */
export interface ShaftMotion {
  readonly t: Milliseconds;
  readonly grip: Point<"world">;
  readonly velocity: Vector;
  readonly toHead: Direction;
  /** World axes, rad/s, square to the shaft. */
  readonly turn: Vector;
  /** The fastest turn and the fastest hands about this time: how far the swing may change. */
  readonly pace: Pace;
  /** Twelve by twelve, row-major, symmetric. Never written to once the motion is made. */
  readonly covariance: Float64Array;
}

export const errorCount = 12;

/** Where each kind of error begins. */
export const at = { grip: 0, velocity: 3, direction: 6, turn: 9 } as const;

/** `vᵀ C w` for two directions and the three by three block of a covariance that begins at `row`, `column`. */
export function throughBlock(covariance: Float64Array, row: number, column: number, v: Vector, w: Vector = v): number {
  const c = (i: number, j: number): number => covariance[(row + i) * errorCount + column + j] ?? 0;
  return (
    v.x * (c(0, 0) * w.x + c(0, 1) * w.y + c(0, 2) * w.z) +
    v.y * (c(1, 0) * w.x + c(1, 1) * w.y + c(1, 2) * w.z) +
    v.z * (c(2, 0) * w.x + c(2, 1) * w.y + c(2, 2) * w.z)
  );
}
