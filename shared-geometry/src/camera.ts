import type { Pixels } from "./units.ts";
import type { Point } from "./point.ts";
import type { Handed } from "./station.ts";

/** Three by three, row-major. */
export type Matrix3 = readonly [number, number, number, number, number, number, number, number, number];

/**
 * A pinhole camera over the world frame of a station.
 * `rotation` takes world directions of a right-handed golfer's frame to camera axes (x right, y down, z forward).
 * A left-handed golfer's world is mirrored in y: the picture's x is mirrored about its width on the way in and out of this camera, and
 * nothing else in the program asks which hand.
 */
export interface Camera {
  readonly width: Pixels;
  readonly height: Pixels;
  readonly focal: Pixels;
  readonly principal: Point<"image">;
  readonly position: Point<"world">;
  readonly rotation: Matrix3;
  readonly handed: Handed;
}

/** Where a camera came from; everything read through it carries this word. */
export type Calibration = "station" | "demo" | "uncalibrated" | "suspect";
