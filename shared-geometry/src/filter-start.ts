import { Matrix } from "ml-matrix";
import { at, errorCount, squareTo, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import { anglesOf } from "./shaft-angles.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** A motion that begins where one lift says, at rest for all that is known. The grip's place is left open: the first update tells it. */
export function startMotion(shaft: ShaftInWorld, depthSd: number): ShaftMotion {
  const { firstPlaceSd, firstSpeedSd, firstRateSd, depthBiasShare, lengthBiasSd } = filterTuning;
  const covariance = Matrix.zeros(errorCount, errorCount);
  const square = squareTo(shaft.toHead);
  covariance.setSubMatrix(Matrix.eye(3).mul(firstPlaceSd ** 2), at.grip, at.grip);
  covariance.setSubMatrix(Matrix.eye(3).mul(firstSpeedSd ** 2), at.velocity, at.velocity);
  covariance.setSubMatrix(directionCovariance(shaft), at.direction, at.direction);
  covariance.setSubMatrix(Matrix.mul(square, firstRateSd ** 2), at.turn, at.turn);
  covariance.set(at.depthBias, at.depthBias, depthBiasShare * depthSd ** 2);
  covariance.set(at.lengthBias, at.lengthBias, lengthBiasSd ** 2);
  return {
    t: shaft.t,
    grip: shaft.grip,
    velocity: { x: 0, y: 0, z: 0 },
    toHead: shaft.toHead,
    turn: { x: 0, y: 0, z: 0 },
    depthBias: 0,
    lengthBias: 0,
    covariance,
  };
}

/** Turns about the world's axes, three by two, for a change of azimuth and of elevation. */
export function turnsOfAngles({ toHead }: Pick<ShaftInWorld, "toHead">): Matrix {
  const { azimuth } = anglesOf(toHead);
  // A change of azimuth turns about the vertical; only its part square to the shaft moves the shaft.
  const { x, y, z } = toHead;
  return new Matrix([
    [-z * x, Math.sin(azimuth)],
    [-z * y, -Math.cos(azimuth)],
    [1 - z * z, 0],
  ]);
}

function directionCovariance(shaft: ShaftInWorld): Matrix {
  const turns = turnsOfAngles(shaft);
  const angles = new Matrix([
    [shaft.covariance[18] ?? 0, shaft.covariance[19] ?? 0],
    [shaft.covariance[23] ?? 0, shaft.covariance[24] ?? 0],
  ]);
  return turns.mmul(angles).mmul(turns.transpose());
}
