import { addCameraSpread } from "./add-camera-spread.ts";
import type { CameraSpread } from "./camera-spread.ts";
import { at, errorCount, type ShaftMotion } from "./filter-motion.ts";
import { addSquares, halfWay } from "./shaft-covariance.ts";
import { turnsOfAngles } from "./turns-of-angles.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** Nearer than this to straight up (the squared level part of the direction) azimuth is no number. */
const leastLevel = 1e-3;

/** A motion as a shaft with the camera's uncertainty added; `twin` with its odds widens the spread where the lean is not settled. */
export function answerOf(
  motion: ShaftMotion,
  spread: CameraSpread,
  twin: { readonly motion: ShaftMotion; readonly odds: number } | null,
): ShaftInWorld {
  const { t, grip, toHead } = motion;
  const [ofAzimuth, ofElevation] = turnsOfAngles(toHead);
  const level = Math.max(leastLevel, 1 - toHead.z * toHead.z);
  const rows: [number, number][][] = [0, 1, 2].map((axis) => [[at.grip + axis, 1]]);
  rows.push(ofAzimuth.map((value, axis) => [at.direction + axis, value / level]));
  rows.push(ofElevation.map((value, axis) => [at.direction + axis, value]));
  const covariance = rows.flatMap((row) =>
    rows.map((column) => {
      let sum = 0;
      for (const [i, by] of row) {
        for (const [j, times] of column) sum += by * times * (motion.covariance[i * errorCount + j] ?? 0);
      }
      return sum;
    }),
  );
  const shaft: ShaftInWorld = { t, grip, toHead, covariance };
  const leanSd = Math.sqrt(Math.max(0, covariance[18] ?? 0) * level + Math.max(0, covariance[24] ?? 0));
  const counted = addCameraSpread(shaft, spread, leanSd) ?? shaft;
  if (!twin) return counted;
  const apart = halfWay(motion, twin.motion).map((value) => 2 * value * Math.sqrt(twin.odds));
  return { ...counted, covariance: addSquares(counted.covariance, [apart]) };
}
