import type { ShaftInImage } from "./image-shaft.ts";
import { mirrorPoint } from "./mirror-picture.ts";
import type { Point } from "./point.ts";
import { pixels, type Metres, type Milliseconds, type Pixels, type Radians } from "./units.ts";

/** What is known of the hands' depth beforehand, with one standard deviation in metres. */
export type DepthPrior =
  /** Their place along the target line (world x). */
  | { readonly kind: "along-target-line"; readonly x: Metres; readonly sd: Metres }
  /** Their distance from the lens along the line of sight. */
  | { readonly kind: "distance"; readonly distance: Metres; readonly sd: Metres };

/** What the lift needs of one picture. Pixels of the upright picture as it was taken, also for a left-handed golfer. */
export interface LiftObservation {
  readonly t: Milliseconds;
  /** A point on the shaft's line at the hands. */
  readonly grip: Point<"image">;
  /** How well the grip point is known along the line (the hands' middle is no sharp place). */
  readonly gripAlongSd: Pixels;
  /** Across the line, at the grip. */
  readonly offsetSd: Pixels;
  /** Unit direction from grip to head in the picture. */
  readonly direction: { readonly x: number; readonly y: number };
  readonly angleSd: Radians;
  /** The head end where it was seen. */
  readonly head: { readonly at: Point<"image">; readonly alongSd: Pixels } | null;
  readonly depth: DepthPrior;
}

/** How well a tracker places the middle of the hands along the shaft when it does not say: about 3 cm at the usual distance. */
export const usualGripAlongSd = pixels(12);

/** The lift's view of a shaft seen in a picture. */
export function observeShaft(
  shaft: Exclude<ShaftInImage, { status: "lost" }>,
  depth: DepthPrior,
  gripAlongSd: Pixels = usualGripAlongSd,
): LiftObservation {
  return {
    t: shaft.t,
    grip: shaft.grip,
    gripAlongSd,
    offsetSd: shaft.offsetSd,
    direction: { x: Math.cos(shaft.angle), y: Math.sin(shaft.angle) },
    angleSd: shaft.sd,
    head: shaft.head && shaft.headSd !== null ? { at: shaft.head, alongSd: shaft.headSd } : null,
    depth,
  };
}

/** The observation seen in a mirror: a left-handed golfer's as a right-handed one's. */
export function mirrorObservation(seen: LiftObservation, width: Pixels): LiftObservation {
  return {
    ...seen,
    grip: mirrorPoint(seen.grip, width),
    direction: { x: -seen.direction.x, y: seen.direction.y },
    head: seen.head && { ...seen.head, at: mirrorPoint(seen.head.at, width) },
  };
}
