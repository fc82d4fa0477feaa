import type { BandDecision } from "./bands.ts";

/** Why a read-out is not a number here. A closed list: screens have a sentence for each. */
export type UndefinedReason =
  "not-read-here" | "too-flat" | "points-up" | "shaft-not-seen" | "no-camera" | "too-fast" | "too-uncertain";

export type ReadOut<T> =
  ({ readonly defined: true } & T) | { readonly defined: false; readonly reason: UndefinedReason };

/** A place on the ground in metres with one standard deviation along each axis, and the band it lies in. */
export interface GroundReading {
  readonly x: number;
  readonly y: number;
  readonly sdX: number;
  readonly sdY: number;
  readonly band: BandDecision;
}

/** A number with one standard deviation in the same unit. */
export interface ScalarReading {
  readonly value: number;
  readonly sd: number;
}

/**
 * Everything that can be read of one shaft.
 * `elevation`: radians above level of the line grip to head (negative: the head is lower than the hands).
 * `direction`: radians on the ground from the target line to the shaft, 0 along the target line, positive towards the golfer's side.
 * `handHeight`: metres above the ground.
 */
export interface ReadOuts {
  readonly buttPoint: ReadOut<GroundReading>;
  readonly headPoint: ReadOut<GroundReading>;
  readonly elevation: ReadOut<ScalarReading>;
  readonly direction: ReadOut<ScalarReading>;
  readonly handHeight: ReadOut<ScalarReading>;
}
