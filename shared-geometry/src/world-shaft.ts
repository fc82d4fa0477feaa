import type { Milliseconds } from "./units.ts";
import type { Point } from "./point.ts";

/** A direction of unit length in the world. */
export interface Direction {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Five by five, row-major, symmetric: grip x, y, z (metres), then the direction's azimuth and elevation (radians). */
export type ShaftCovariance = readonly number[];

/**
 * The shaft in the world: the grip point, and the unit direction from grip to club head.
 * Azimuth is atan2(y, x) of the direction, elevation asin(z).
 */
export interface ShaftInWorld {
  readonly t: Milliseconds;
  readonly grip: Point<"world">;
  readonly toHead: Direction;
  readonly covariance: ShaftCovariance;
}
