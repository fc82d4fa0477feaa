import type { CameraSpread } from "./camera-spread.ts";
import { lastingColumns } from "./lasting-columns.ts";
import { worldPoint } from "./point.ts";
import { buttPointSd } from "./read-outs-of.ts";
import { addSquares, noCovariance } from "./shaft-covariance.ts";
import { directionOf } from "./shaft-angles.ts";
import { milliseconds } from "./units.ts";

const degree = Math.PI / 180;
const usualLeanSd = 10 * degree;

/**
 * What a camera's own uncertainty adds to a butt point's y, metres: hands 1.25 m up behind the toe line, shaft at 55 degrees, near square to the
 * target line. Infinity where that shaft would not be in front of the camera.
 */
export function buttSdFromCamera(spread: CameraSpread): number {
  const shaft = {
    t: milliseconds(0),
    grip: worldPoint(-0.35, 0.85, 1.25),
    toHead: directionOf(100 * degree, 55 * degree),
  };
  const columns = lastingColumns(shaft, spread, { length: 0.82, lengthSd: 0, depthSd: 0 }, usualLeanSd);
  return columns ? buttPointSd({ ...shaft, covariance: addSquares(noCovariance, columns) }).sdY : Infinity;
}
