import { buttPoint } from "./butt-point.ts";
import type { CheckpointId } from "./checkpoints.ts";
import { decideBand } from "./decide-band.ts";
import { gripToHead } from "./grip-convention.ts";
import { headPoint } from "./head-point.ts";
import type { Point } from "./point.ts";
import type { GroundReading, ReadOut, ReadOuts, ScalarReading, UndefinedReason } from "./read-outs.ts";
import { anglesOf } from "./shaft-angles.ts";
import type { StationSettings } from "./station.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** A place on the ground known no better than this (metres, one sd of y) spans the station: no band can be claimed of it. */
export const greatestGroundSd = 0.25;

/** What a camera adds to the error of what is read through it, one sd each: metres on the ground and of height, radians. */
export interface CameraError {
  readonly ground: number;
  readonly height: number;
  readonly angle: number;
}

const fiveDegrees = (5 * Math.PI) / 180;

/** A camera that nobody solved: a phone put up by eye stands 0.3 m aside and 0.2 m too high, and looks 5 degrees past, from 4 m behind. Common practice, no source. */
export const assumedCamera: CameraError = {
  ground: Math.hypot(0.3, 4 * Math.tan(fiveDegrees)),
  height: 0.2,
  angle: fiveDegrees,
};

/** The shaft's covariance holds the error of a solved camera already. */
const solvedCamera: CameraError = { ground: 0, height: 0, angle: 0 };

/** A direction known no better than this (radians, one sd) says nothing. */
export const greatestAngleSd = (20 * Math.PI) / 180;

type Name = keyof ReadOuts;

/** What is read at each checkpoint. The shaft's elevation and the hands' height are defined everywhere. */
const readAt: Readonly<Record<CheckpointId, readonly Name[]>> = {
  address: ["headPoint"],
  takeaway: ["headPoint"],
  "shaft-level-back": ["headPoint", "direction"],
  "arm-level-back": ["buttPoint"],
  top: ["direction"],
  "arm-level-down": ["buttPoint"],
  "shaft-level-down": ["headPoint", "direction"],
  impact: ["headPoint"],
};

/**
 * Everything that can be read of one shaft at a checkpoint, or between them (`checkpoint` null: all that geometry defines).
 * Standard errors come from the shaft's covariance through the analytic derivative of each read-out. `camera`: what it adds to them that the covariance does not hold.
 */
export function readOutsOf(
  shaft: ShaftInWorld,
  settings: StationSettings,
  checkpoint: CheckpointId | null,
  camera: CameraError = solvedCamera,
): ReadOuts {
  const { azimuth, elevation } = anglesOf(shaft.toHead);
  const isRead = (name: Name): boolean => checkpoint === null || readAt[checkpoint].includes(name);
  const sd = (row: Row): number => sdAlong(row, shaft.covariance);
  const ground = (place: Point<"ground">, rowX: Row, rowY: Row): ReadOut<GroundReading> => {
    const ownSdY = sd(rowY);
    if (!(ownSdY <= greatestGroundSd)) return undefinedFor("too-uncertain");
    const sdX = Math.hypot(sd(rowX), camera.ground);
    const sdY = Math.hypot(ownSdY, camera.ground);
    return { defined: true, x: place.x, y: place.y, sdX, sdY, band: decideBand(place.y, sdY, settings) };
  };

  const readButt = (): ReadOut<GroundReading> => {
    if (!isRead("buttPoint")) return undefinedFor("not-read-here");
    const butt = buttPoint(shaft);
    return butt.ok ? ground(butt.point, ...buttRows(shaft, azimuth, elevation)) : undefinedFor(butt.reason);
  };
  const readHead = (): ReadOut<GroundReading> =>
    isRead("headPoint")
      ? ground(headPoint(shaft, settings), ...headRows(gripToHead(settings), azimuth, elevation))
      : undefinedFor("not-read-here");

  return {
    buttPoint: readButt(),
    headPoint: readHead(),
    elevation: scalar(elevation, sd([0, 0, 0, 0, 1]), greatestAngleSd, camera.angle),
    direction: isRead("direction")
      ? scalar(azimuth, sd([0, 0, 0, 1, 0]), greatestAngleSd, camera.angle)
      : undefinedFor("not-read-here"),
    handHeight: scalar(shaft.grip.z, sd([0, 0, 1, 0, 0]), greatestGroundSd, camera.height),
  };
}

/** Every read-out undefined for one reason: no shaft, no camera. */
export function noReadOuts(reason: UndefinedReason): ReadOuts {
  const undefinedReading = undefinedFor(reason);
  return {
    buttPoint: undefinedReading,
    headPoint: undefinedReading,
    elevation: undefinedReading,
    direction: undefinedReading,
    handHeight: undefinedReading,
  };
}

/** One standard deviation of the butt point along x and y, metres, whether or not it is a read-out there. */
export function buttPointSd(shaft: ShaftInWorld): { readonly sdX: number; readonly sdY: number } {
  const { azimuth, elevation } = anglesOf(shaft.toHead);
  const [rowX, rowY] = buttRows(shaft, azimuth, elevation);
  return { sdX: sdAlong(rowX, shaft.covariance), sdY: sdAlong(rowY, shaft.covariance) };
}

/** The derivative of a read-out by grip x, y, z, azimuth, elevation. */
type Row = readonly [number, number, number, number, number];

/** Butt point: grip - z cot(elevation) (cos azimuth, sin azimuth). */
function buttRows(shaft: ShaftInWorld, azimuth: number, elevation: number): [Row, Row] {
  const cot = Math.cos(elevation) / Math.sin(elevation);
  const perElevation = shaft.grip.z / Math.sin(elevation) ** 2;
  const cos = Math.cos(azimuth);
  const sin = Math.sin(azimuth);
  const reach = shaft.grip.z * cot;
  return [
    [1, 0, -cot * cos, reach * sin, perElevation * cos],
    [0, 1, -cot * sin, -reach * cos, perElevation * sin],
  ];
}

/** Head point: grip + reach cos(elevation) (cos azimuth, sin azimuth). */
function headRows(reach: number, azimuth: number, elevation: number): [Row, Row] {
  const level = reach * Math.cos(elevation);
  const drop = -reach * Math.sin(elevation);
  const cos = Math.cos(azimuth);
  const sin = Math.sin(azimuth);
  return [
    [1, 0, 0, -level * sin, drop * cos],
    [0, 1, 0, level * cos, drop * sin],
  ];
}

function sdAlong(row: Row, covariance: readonly number[]): number {
  let variance = 0;
  for (let i = 0; i < 5; i++) {
    for (let j = 0; j < 5; j++) variance += (row[i] ?? 0) * (row[j] ?? 0) * (covariance[5 * i + j] ?? Number.NaN);
  }
  return variance >= 0 ? Math.sqrt(variance) : variance > -1e-12 ? 0 : Number.NaN;
}

function scalar(value: number, ownSd: number, greatest: number, ofCamera: number): ReadOut<ScalarReading> {
  return ownSd <= greatest ? { defined: true, value, sd: Math.hypot(ownSd, ofCamera) } : undefinedFor("too-uncertain");
}

const undefinedFor = (reason: UndefinedReason) => ({ defined: false, reason }) as const;
