import type { CameraSpread } from "./camera-spread.ts";
import { at, errorCount, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import { lastingColumns } from "./lasting-columns.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { addSquares } from "./shaft-covariance.ts";
import { turnedInPicture } from "./turned-in-picture.ts";
import { turnsOfAngles } from "./turns-of-angles.ts";
import { cross, normalise, subtract, type Vector } from "./vector.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** Nearer than this to straight up (the squared level part of the direction) azimuth is no number. */
const leastLevel = 1e-3;

export interface AnswerSetting {
  /** From grip to head, metres. */
  readonly length: number;
  /** How well the hands' depth is said to be known, metres, one sd. */
  readonly depthSd: number;
}

/**
 * A motion as a shaft with the spread of what stays the same through a rep added. `unsettled`: how far other leans that may still be true lie from this one, mean square,
 * square radians. `seen`: the picture's own observation, null where no shaft was; what it shows against the answer counts as an error (`turnedInPicture`).
 */
export function answerOf(
  motion: ShaftMotion,
  spread: CameraSpread,
  { length, depthSd }: AnswerSetting,
  unsettled: number,
  seen: LiftObservation | null,
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
  const { lengthBiasSd, depthBiasShare } = filterTuning;
  const lasting = { length, lengthSd: lengthBiasSd, depthSd: Math.sqrt(depthBiasShare) * depthSd };
  const columns = lastingColumns(shaft, spread, lasting, leanSd) ?? [];
  const sight = normalise(subtract(grip, spread.camera.position));
  const axis = sight && normalise(cross(sight, toHead));
  if (!axis) return { ...shaft, covariance: addSquares(covariance, columns) };
  const turnBy = (by: number, { x, y, z }: Vector): number[] => {
    const along = (turn: readonly number[]): number =>
      by * (x * (turn[0] ?? 0) + y * (turn[1] ?? 0) + z * (turn[2] ?? 0));
    return [0, 0, 0, along(ofAzimuth) / level, along(ofElevation)];
  };
  columns.push(turnBy(Math.sqrt(unsettled), axis));
  if (seen !== null) columns.push(turnBy(turnedInPicture(motion, seen, spread.upright), sight));
  return { ...shaft, covariance: addSquares(covariance, columns) };
}
