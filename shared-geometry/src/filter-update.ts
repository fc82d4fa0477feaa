import type { Matrix } from "ml-matrix";
import type { Camera } from "./camera.ts";
import { correctMotion } from "./filter-correct.ts";
import { at, errorCount, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { ray } from "./camera-ray.ts";
import { along, cross, dot, normalise, subtract, type Vector } from "./vector.ts";

export interface Update {
  readonly motion: ShaftMotion;
  /** Natural logarithm of how likely the observation was, up to a constant. */
  readonly logLikelihood: number;
}

/** One number measured: what it was less what was expected, its variance, and how the expected one changes with each error. */
interface Measurement {
  readonly miss: number;
  readonly variance: number;
  readonly row: Float64Array;
}

/**
 * The motion after a picture: an extended Kalman step, one number at a time (Bar-Shalom, Li and Kirubarajan 2001, 5.2 and 10.3), with the
 * second-order term where a shaft is square to the line of sight, since its seen length changes there with the square of its lean only.
 * Numbers far off what was expected lose weight. Camera and observation are a right-handed golfer's. `useLine` false leaves out what the first lift already used.
 */
export function updateMotion(
  motion: ShaftMotion,
  observation: LiftObservation,
  camera: Camera,
  length: number,
  inflate: number,
  useLine = true,
): Update {
  const measurements = measure(motion, observation, camera, length, useLine);
  if (!measurements) return { motion, logLikelihood: -50 };
  const covariance = motion.covariance.clone();
  const error = new Float64Array(errorCount);
  const gain = new Float64Array(errorCount);
  let logLikelihood = 0;
  for (const { miss, variance, row } of measurements) {
    let expected = 0;
    let total = 0;
    for (let i = 0; i < errorCount; i++) {
      let sum = 0;
      for (let j = 0; j < errorCount; j++) sum += covariance.get(i, j) * (row[j] ?? 0);
      gain[i] = sum;
      total += (row[i] ?? 0) * sum;
      expected += (row[i] ?? 0) * (error[i] ?? 0);
    }
    const innovation = miss - expected;
    const plain = total + variance * inflate;
    const inSds = Math.abs(innovation) / Math.sqrt(plain);
    const scale = inSds > filterTuning.robustBeyond ? (inSds / filterTuning.robustBeyond) ** 2 : 1;
    const spread = total + variance * inflate * scale;
    logLikelihood -= 0.5 * (Math.min(innovation ** 2 / plain, 12) + Math.log(plain));
    for (let i = 0; i < errorCount; i++) {
      const by = (gain[i] ?? 0) / spread;
      error[i] = (error[i] ?? 0) + by * innovation;
      for (let j = 0; j < errorCount; j++) covariance.set(i, j, covariance.get(i, j) - by * (gain[j] ?? 0));
    }
  }
  return { motion: correctMotion({ ...motion, covariance: symmetric(covariance) }, error), logLikelihood };
}

function measure(
  motion: ShaftMotion,
  observation: LiftObservation,
  camera: Camera,
  length: number,
  useLine: boolean,
): Measurement[] | null {
  const reach = length + motion.lengthBias;
  const head = along(motion.grip, motion.toHead, reach);
  const seenGrip = look(camera, motion.grip);
  const seenHead = look(camera, head);
  if (!seenGrip || !seenHead) return null;
  const { direction, grip, depth } = observation;
  const across = { x: -direction.y, y: direction.x };
  const on = (axis: { x: number; y: number }, seen: Seen): Vector => ({
    x: axis.x * seen.perX.x + axis.y * seen.perY.x,
    y: axis.x * seen.perX.y + axis.y * seen.perY.y,
    z: axis.x * seen.perX.z + axis.y * seen.perY.z,
  });
  const gripRow = (axis: { x: number; y: number }): Float64Array =>
    put(new Float64Array(errorCount), at.grip, on(axis, seenGrip));
  const headRow = (axis: { x: number; y: number }): Float64Array => {
    const per = on(axis, seenHead);
    const row = put(new Float64Array(errorCount), at.grip, per);
    const turn = cross(motion.toHead, per);
    put(row, at.direction, { x: reach * turn.x, y: reach * turn.y, z: reach * turn.z });
    row[at.lengthBias] = dot(per, motion.toHead);
    return row;
  };
  const off = (axis: { x: number; y: number }, to: { x: number; y: number }, from: { x: number; y: number }): number =>
    axis.x * (to.x - from.x) + axis.y * (to.y - from.y);

  const depthRow = new Float64Array(errorCount);
  const sight = ray(camera, grip).direction;
  const depthMiss =
    depth.kind === "along-target-line"
      ? depth.x - motion.grip.x
      : depth.distance - dot(subtract(motion.grip, camera.position), sight);
  put(depthRow, at.grip, depth.kind === "along-target-line" ? { x: 1, y: 0, z: 0 } : sight);
  depthRow[at.depthBias] = 1;
  const measurements: Measurement[] = [
    { miss: off(across, grip, seenGrip), variance: observation.offsetSd ** 2, row: gripRow(across) },
    { miss: off(direction, grip, seenGrip), variance: observation.gripAlongSd ** 2, row: gripRow(direction) },
    {
      miss: depthMiss - motion.depthBias,
      variance: (1 - filterTuning.depthBiasShare) * depth.sd ** 2,
      row: depthRow,
    },
  ];
  if (!useLine) return measurements;

  const seenLength = Math.hypot(seenHead.x - seenGrip.x, seenHead.y - seenGrip.y);
  const shaftRow = headRow(across).map((value, index) => value - (index < 3 ? (gripRow(across)[index] ?? 0) : 0));
  measurements.push({
    miss: -off(across, seenHead, seenGrip),
    variance: (Math.max(seenLength, 10) * observation.angleSd) ** 2 + 0.04,
    row: shaftRow,
  });
  if (observation.head) {
    const toLens = normalise(subtract(head, camera.position));
    const axis = toLens && normalise(cross(toLens, motion.toHead));
    const leanVariance = axis ? Math.min(0.25, quadratic(motion.covariance, at.direction, axis)) : 0;
    const bend = 0.5 * seenLength * leanVariance;
    measurements.push({
      miss: off(direction, observation.head.at, seenHead) + bend,
      variance: observation.head.alongSd ** 2 + 2 * bend * bend,
      row: headRow(direction),
    });
  }
  return measurements;
}

interface Seen {
  readonly x: number;
  readonly y: number;
  /** How the place in the picture changes with the place in the world, pixels a metre. */
  readonly perX: Vector;
  readonly perY: Vector;
}

/** A place in a right-handed golfer's picture, with its derivative. */
function look(camera: Camera, point: Vector): Seen | null {
  const [rxx, rxy, rxz, ryx, ryy, ryz, rzx, rzy, rzz] = camera.rotation;
  const { x, y, z } = subtract(point, camera.position);
  const deep = rzx * x + rzy * y + rzz * z;
  if (!(deep > 1e-6)) return null;
  const u = (rxx * x + rxy * y + rxz * z) / deep;
  const v = (ryx * x + ryy * y + ryz * z) / deep;
  const scale = camera.focal / deep;
  return {
    x: camera.principal.x + camera.focal * u,
    y: camera.principal.y + camera.focal * v,
    perX: { x: scale * (rxx - u * rzx), y: scale * (rxy - u * rzy), z: scale * (rxz - u * rzz) },
    perY: { x: scale * (ryx - v * rzx), y: scale * (ryy - v * rzy), z: scale * (ryz - v * rzz) },
  };
}

function put(row: Float64Array, first: number, { x, y, z }: Vector): Float64Array {
  row[first] = x;
  row[first + 1] = y;
  row[first + 2] = z;
  return row;
}

function quadratic(covariance: Matrix, first: number, { x, y, z }: Vector): number {
  const axis = [x, y, z];
  let sum = 0;
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) sum += (axis[i] ?? 0) * (axis[j] ?? 0) * covariance.get(first + i, first + j);
  }
  return sum;
}

function symmetric(matrix: Matrix): Matrix {
  for (let i = 0; i < matrix.rows; i++) {
    for (let j = 0; j < i; j++) {
      const mean = (matrix.get(i, j) + matrix.get(j, i)) / 2;
      matrix.set(i, j, mean);
      matrix.set(j, i, mean);
    }
  }
  return matrix;
}
