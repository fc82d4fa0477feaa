import type { Camera } from "@overcue/shared-geometry/camera";
import type { StationSettings } from "@overcue/shared-geometry/station";

/** Where a solved camera stands as a person with a tape measure would say it. Metres; degrees. */
export interface CameraView {
  readonly behindBall: number;
  readonly height: number;
  /** From the hand line, positive towards the heels. */
  readonly aside: number;
  /** How far the picture is turned about the lens's axis, 0 = level. */
  readonly roll: number;
}

/** The hands at address are about here before the toe line. Common practice, no source. */
const handsBeforeToes = 0.025;

const degrees = (radians: number): number => (radians * 180) / Math.PI;

export function cameraView({ position, rotation }: Camera, { toeLine }: StationSettings): CameraView {
  // The first row is the picture's x axis in the world: level where it has no height.
  const [, , rise] = rotation;
  return {
    behindBall: -position.x,
    height: position.z,
    aside: position.y - (toeLine - handsBeforeToes),
    roll: degrees(Math.asin(Math.min(1, Math.max(-1, rise)))),
  };
}
