import type { Milliseconds, Radians } from "@overcue/shared-geometry/units";
import type { Point } from "@overcue/shared-geometry/point";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

/** A number with one standard deviation in its own unit. */
export interface Estimated {
  readonly value: number;
  readonly sd: number;
}

/** The club in the picture, metres at the ball's distance, right and down from where the ball lies; `head` is null where it was not seen. `angle`: of the shaft there, towards the head, radians. */
export interface ClubInPicture {
  readonly grip: { readonly x: number; readonly y: number };
  readonly head: { readonly x: number; readonly y: number } | null;
  readonly angle: Radians;
}

/**
 * One moment as the swing clock sees it, in the world frame. Whatever was not found is null; nothing is guessed here.
 * `trailThighX`: x of the middle of the trail thigh, metres along the target line.
 * `leadShoulderZ`: height of the lead shoulder, metres.
 * `feet`: middle of the two ankles on the ground.
 */
export interface SwingSample {
  readonly t: Milliseconds;
  readonly shaft: ShaftInWorld | null;
  /** The shaft as this picture alone shows it, its lean perhaps the wrong way round; null where it was not seen, or nobody worked it out. */
  readonly alone: ShaftInWorld | null;
  /** Whether `shaft` rests on this moment's picture (else on the motion before and after it). */
  readonly tracked: boolean;
  readonly hands: { readonly place: Point<"world">; readonly sd: number } | null;
  readonly leadShoulderZ: Estimated | null;
  readonly trailThighX: Estimated | null;
  /** Null where the club was not seen in this picture, or nobody knows the camera. */
  readonly inPicture: ClubInPicture | null;
  readonly feet: Point<"ground"> | null;
}
