import type { Milliseconds, Radians } from "@overcue/shared-geometry/units";
import type { Point } from "@overcue/shared-geometry/point";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Direction } from "@overcue/shared-geometry/world-shaft";

/** The demo golfer's club as it really was in one picture, at mid-exposure. */
export interface DemoTruth {
  readonly t: Milliseconds;
  /** Middle of the grips. */
  readonly grip: Point<"world">;
  readonly butt: Point<"world">;
  readonly head: Point<"world">;
  readonly toHead: Direction;
  readonly gripInPicture: Point<"image">;
  readonly headInPicture: Point<"image">;
  readonly angleInPicture: Radians;
  /** The rep this belongs to, counted from 0; null between reps. */
  readonly rep: number | null;
}

/** A checkpoint of a demo rep, to the millisecond. */
export interface DemoCheckpoint {
  readonly rep: number;
  readonly checkpoint: CheckpointId;
  readonly t: Milliseconds;
}
