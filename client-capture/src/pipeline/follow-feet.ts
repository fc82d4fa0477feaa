import { ray } from "@overcue/shared-geometry/camera-ray";
import type { Camera } from "@overcue/shared-geometry/camera";
import { groundPoint, imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { along } from "@overcue/shared-geometry/vector";
import { landmarkIndex, type Body } from "./body.ts";

export interface FeetState {
  readonly place: { readonly x: number; readonly y: number } | null;
  readonly t: number;
}

export const startFeet: FeetState = { place: null, t: 0 };

/** Height of the heel and toe landmarks over the ground, metres: the middle of a shoe. From memory, no source. */
const landmarkHeight = 0.04;
/** Planted feet are averaged over this long, milliseconds. */
const settling = 1500;
/** Feet that are this far from their average, metres, have been moved. */
const moved = 0.4;
/** Where the feet's middle lies along the target line before anything is seen: about the ball, and how far off that may be. */
const usualX = -0.05;
const usualXSd = 0.15;
/** How well a foot seen from some metres behind is placed along the target line: a few pixels of height are a decimetre there. */
const seenXSd = 0.2;
const nearest = 0.5;
const farthest = 15;

interface Feet {
  readonly place: Point<"ground">;
  /** One standard deviation along the target line, metres. */
  readonly sdX: number;
}

/** The middle of the two feet on the ground: their landmarks cast down onto it, averaged while they stand, and weighed against where a golfer stands. */
export function followFeet(
  state: FeetState,
  body: Body,
  camera: Camera,
  settings: StationSettings,
): { readonly state: FeetState; readonly output: Feet } {
  const seen = castFeet(body, camera);
  const next = seen === null ? state : blend(state, seen, body.t);
  const shoe = (settings.toeLine + settings.heelLine) / 2;
  if (next.place === null) {
    return { state: next, output: { place: groundPoint(usualX, shoe), sdX: usualXSd } };
  }
  const trust = 1 / seenXSd ** 2 / (1 / seenXSd ** 2 + 1 / usualXSd ** 2);
  return {
    state: next,
    output: {
      place: groundPoint(trust * next.place.x + (1 - trust) * usualX, next.place.y),
      sdX: Math.sqrt(1 / (1 / seenXSd ** 2 + 1 / usualXSd ** 2)),
    },
  };
}

function blend(state: FeetState, seen: { x: number; y: number }, t: number): FeetState {
  const { place } = state;
  const passed = t - state.t;
  const stayed = place !== null && passed >= 0 && Math.hypot(seen.x - place.x, seen.y - place.y) < moved;
  if (!stayed) return { place: seen, t };
  const share = Math.min(1, Math.max(0.02, passed / settling));
  return { place: { x: place.x + share * (seen.x - place.x), y: place.y + share * (seen.y - place.y) }, t };
}

function castFeet(body: Body, camera: Camera): { x: number; y: number } | null {
  const cast = [landmarkIndex.leftHeel, landmarkIndex.rightHeel, landmarkIndex.leftToe, landmarkIndex.rightToe].map(
    (index) => castDown(body.landmarks[index], camera),
  );
  const found = cast.filter((place) => place !== null);
  if (found.length < 2) return null;
  return {
    x: found.reduce((sum, { x }) => sum + x, 0) / found.length,
    y: found.reduce((sum, { y }) => sum + y, 0) / found.length,
  };
}

function castDown(
  landmark: { readonly x: number; readonly y: number; readonly visibility: number } | undefined,
  camera: Camera,
): { x: number; y: number } | null {
  if (landmark === undefined || landmark.visibility < 0.2) return null;
  const { origin, direction } = ray(camera, imagePoint(landmark.x, landmark.y));
  if (direction.z > -1e-3) return null;
  const place = along(origin, direction, (landmarkHeight - origin.z) / direction.z);
  const distance = Math.hypot(place.x - origin.x, place.y - origin.y);
  return distance > nearest && distance < farthest ? { x: place.x, y: place.y } : null;
}
