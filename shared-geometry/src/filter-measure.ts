import type { Camera } from "./camera.ts";
import { ray } from "./camera-ray.ts";
import { at, errorCount, throughBlock, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { along, cross, dot, normalise, subtract, type Vector } from "./vector.ts";

/** One number measured: what it was less what was expected, its variance, and how the expected one changes with each error. */
export interface Measurement {
  readonly miss: number;
  readonly variance: number;
  readonly row: Float64Array;
}

/** In the picture's pixels: the least length a shaft's angle is weighed with, and the least sd across its far end. */
const leastLength = 10;
const leastAcross = 0.2;

/**
 * What a picture measures of a motion, as independent numbers: the line's place across and along at the grip, the depth, the line's angle (as the far
 * end's miss across) and the head along the line. Null where the shaft is not in front of the lens. `useLine` false: the hands' place only.
 * Where a shaft is square to the line of sight its seen length changes with the square of its lean only; the head's number carries that second-order term.
 */
export function measureMotion(
  motion: ShaftMotion,
  observation: LiftObservation,
  camera: Camera,
  length: number,
  useLine: boolean,
): readonly Measurement[] | null {
  const reach = length + motion.lengthBias;
  const headInWorld = along(motion.grip, motion.toHead, reach);
  const grip = look(camera, motion.grip);
  const head = look(camera, headInWorld);
  if (!grip || !head) return null;
  const { direction } = observation;
  const across = { x: -direction.y, y: direction.x };
  const gripOn = (axis: Axis): Float64Array => put(new Float64Array(errorCount), at.grip, changeOn(axis, grip));
  const measurements: Measurement[] = [
    { miss: off(across, observation.grip, grip), variance: observation.offsetSd ** 2, row: gripOn(across) },
    { miss: off(direction, observation.grip, grip), variance: observation.gripAlongSd ** 2, row: gripOn(direction) },
    measureDepth(motion, observation, camera),
  ];
  if (!useLine) return measurements;

  const headOn = (axis: Axis): Float64Array => {
    const per = changeOn(axis, head);
    const row = put(new Float64Array(errorCount), at.grip, per);
    const turn = cross(motion.toHead, per);
    put(row, at.direction, { x: reach * turn.x, y: reach * turn.y, z: reach * turn.z });
    row[at.lengthBias] = dot(per, motion.toHead);
    return row;
  };
  const seenLength = Math.hypot(head.x - grip.x, head.y - grip.y);
  const fromGrip = gripOn(across);
  measurements.push({
    miss: -off(across, head, grip),
    variance: (Math.max(seenLength, leastLength) * observation.angleSd) ** 2 + leastAcross ** 2,
    row: headOn(across).map((value, index) => value - (fromGrip[index] ?? 0)),
  });
  if (!observation.head) return measurements;
  const sight = normalise(subtract(headInWorld, camera.position));
  const axis = sight && normalise(cross(sight, motion.toHead));
  const leanVariance = axis ? Math.min(0.25, throughBlock(motion.covariance, at.direction, at.direction, axis)) : 0;
  const bend = 0.5 * seenLength * leanVariance;
  measurements.push({
    miss: off(direction, observation.head.at, head) + bend,
    variance: observation.head.alongSd ** 2 + 2 * bend * bend,
    row: headOn(direction),
  });
  return measurements;
}

function measureDepth(motion: ShaftMotion, { depth, grip }: LiftObservation, camera: Camera): Measurement {
  const row = new Float64Array(errorCount);
  row[at.depthBias] = 1;
  const variance = (1 - filterTuning.depthBiasShare) * depth.sd ** 2;
  if (depth.kind === "along-target-line") {
    row[at.grip] = 1;
    return { miss: depth.x - motion.grip.x - motion.depthBias, variance, row };
  }
  const sight = ray(camera, grip).direction;
  const distance = dot(subtract(motion.grip, camera.position), sight);
  return { miss: depth.distance - distance - motion.depthBias, variance, row: put(row, at.grip, sight) };
}

interface Axis {
  readonly x: number;
  readonly y: number;
}

interface Seen extends Axis {
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

const off = (axis: Axis, to: Axis, from: Axis): number => axis.x * (to.x - from.x) + axis.y * (to.y - from.y);

const changeOn = (axis: Axis, { perX, perY }: Seen): Vector => ({
  x: axis.x * perX.x + axis.y * perY.x,
  y: axis.x * perX.y + axis.y * perY.y,
  z: axis.x * perX.z + axis.y * perY.z,
});

function put(row: Float64Array, first: number, { x, y, z }: Vector): Float64Array {
  row[first] = x;
  row[first + 1] = y;
  row[first + 2] = z;
  return row;
}
