import { Matrix } from "ml-matrix";
import { addCameraSpread } from "./add-camera-spread.ts";
import type { CameraSpread } from "./camera-spread.ts";
import { at, type ShaftMotion } from "./filter-motion.ts";
import { turnsOfAngles } from "./filter-start.ts";
import { halfWay, addSquares } from "./shaft-covariance.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** Nearer than this to straight up (the level part of the direction) azimuth is no number. */
const levelPart = 1e-3;

/** A motion as a shaft with the camera's uncertainty added; `twin` with its odds widens the spread where the lean is not settled. */
export function answerOf(
  motion: ShaftMotion,
  spread: CameraSpread,
  twin: { readonly motion: ShaftMotion; readonly odds: number } | null,
): ShaftInWorld {
  const turns = turnsOfAngles(motion);
  const level = Math.max(levelPart, 1 - motion.toHead.z ** 2);
  // The two columns are square to each other; their lengths are sqrt(level) and 1.
  const angles = turns.transpose();
  angles.mulRow(0, 1 / level);
  const change = Matrix.zeros(5, 6);
  for (let axis = 0; axis < 3; axis++) change.set(axis, axis, 1);
  change.setSubMatrix(angles, 3, 3);
  const covariance = motion.covariance;
  const errors = Matrix.zeros(6, 6);
  const places = [at.grip, at.direction];
  for (const [row, first] of places.entries()) {
    for (const [column, second] of places.entries()) {
      errors.setSubMatrix(covariance.subMatrix(first, first + 2, second, second + 2), 3 * row, 3 * column);
    }
  }
  const shaft: ShaftInWorld = {
    t: motion.t,
    grip: motion.grip,
    toHead: motion.toHead,
    covariance: change.mmul(errors).mmul(change.transpose()).to1DArray(),
  };
  const leanSd = Math.sqrt(Math.max(0, Math.max(errors.get(3, 3), errors.get(4, 4), errors.get(5, 5))));
  const counted = addCameraSpread(shaft, spread, leanSd) ?? shaft;
  if (!twin) return counted;
  const apart = halfWay(motion, twin.motion).map((value) => 2 * value * Math.sqrt(twin.odds));
  return { ...counted, covariance: addSquares(counted.covariance, [apart]) };
}
