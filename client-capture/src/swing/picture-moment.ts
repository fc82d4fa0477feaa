import type { Point } from "@overcue/shared-geometry/point";

/**
 * One picture of a clip whose camera nobody knows, as the parts of a swing can still be told from it. Pixels of the upright picture;
 * for a left-handed golfer mirrored about its middle, so that the ball always lies to the right.
 * `scale`: pixels to the metre at the golfer.
 */
export interface PictureMoment {
  readonly t: number;
  readonly hands: Point<"image"> | null;
  /** Grip to head where the shaft was tracked. */
  readonly shaft: {
    readonly angle: number;
    readonly grip: Point<"image">;
    readonly head: Point<"image"> | null;
  } | null;
  readonly leadShoulder: Point<"image"> | null;
  readonly scale: number;
}
