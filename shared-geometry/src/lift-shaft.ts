import { ray } from "./camera-ray.ts";
import type { Camera } from "./camera.ts";
import { gripToHead } from "./grip-convention.ts";
import type { DepthPrior, LiftObservation } from "./lift-observation.ts";
import { imagePoint } from "./point.ts";
import { anglesOf } from "./shaft-angles.ts";
import type { StationSettings } from "./station.ts";
import type { Metres } from "./units.ts";
import { add, along, dot, normalise, scale, subtract, type Vector } from "./vector.ts";
import type { ShaftInWorld } from "./world-shaft.ts";
import { angleBetween, wrapAngle } from "./angle.ts";
import { radians } from "./units.ts";

/** Why a shaft could not be lifted. A closed list. */
export type LiftRefusal = "depth-undefined" | "behind-camera" | "bad-observation";

export type Lift =
  /** The likely leans, towards the camera first. One candidate where the head was not seen: its spread covers both leans. */
  | { readonly ok: true; readonly candidates: readonly ShaftInWorld[] }
  | { readonly ok: false; readonly reason: LiftRefusal };

/** How well the grip-to-head length is known, metres: the club's stated length and the hands' place on it. */
export const lengthSd = 0.015;

/** How far the shaft may lean out of the plane square to the line of sight when its head is not seen, one sd, radians. */
export const unseenLeanSd = 0.6;

/**
 * The shaft in the world from one picture. The hands' depth places the grip on its line of sight; the picture's line gives a plane through the lens;
 * the club's length and the head's place give the lean in that plane, up to its sign.
 * Covariance by one-sd steps through every source of error, after the unscented transform (Julier and Uhlmann 1997).
 */
export function liftShaft(
  camera: Camera,
  observation: LiftObservation,
  settings: Pick<StationSettings, "clubLength">,
): Lift {
  const length = gripToHead(settings);
  const { angleSd, offsetSd, gripAlongSd, depth, head } = observation;
  const spreads = [offsetSd, gripAlongSd, angleSd, depth.sd, lengthSd, head?.alongSd ?? unseenLeanSd];
  if (!spreads.every((spread) => Number.isFinite(spread) && spread >= 0)) return refuse("bad-observation");
  const leans = head ? ([-1, 1] as const) : ([0] as const);
  const candidates: ShaftInWorld[] = [];
  for (const lean of leans) {
    const middle = place(camera, observation, length, lean, noError);
    if (typeof middle === "string") return refuse(middle);
    const columns: number[][] = [];
    for (const [source, spread] of spreads.entries()) {
      const up = place(camera, observation, length, lean, noError.with(source, spread));
      const down = place(camera, observation, length, lean, noError.with(source, -spread));
      if (typeof up === "string" || typeof down === "string") return refuse("bad-observation");
      columns.push(halfDifference(up, down));
    }
    const { grip, toHead } = middle;
    candidates.push({ t: observation.t, grip, toHead, covariance: sumOfSquares(columns) });
  }
  return { ok: true, candidates };
}

interface Placed {
  readonly grip: Vector;
  readonly toHead: Vector;
}

/** Errors added to what was observed: offset, grip along, angle, depth, length, head along (or the lean itself where no head was seen). */
type Errors = readonly number[];
const noError: Errors = [0, 0, 0, 0, 0, 0];

function place(
  camera: Camera,
  observation: LiftObservation,
  length: Metres,
  lean: -1 | 0 | 1,
  errors: Errors,
): Placed | LiftRefusal {
  const [offset = 0, gripAlong = 0, turn = 0, deeper = 0, longer = 0, last = 0] = errors;
  const { grip, direction, head, depth } = observation;
  const turned = {
    x: direction.x * Math.cos(turn) - direction.y * Math.sin(turn),
    y: direction.y * Math.cos(turn) + direction.x * Math.sin(turn),
  };
  const at = (by: number) =>
    imagePoint(grip.x + by * turned.x - offset * direction.y, grip.y + by * turned.y + offset * direction.x);

  const sight = ray(camera, at(gripAlong));
  const distance = distanceTo(sight.origin, sight.direction, depth, deeper);
  if (distance === null) return "depth-undefined";
  if (!(distance > 0)) return "behind-camera";
  const gripInWorld = along(sight.origin, sight.direction, distance);

  if (!head) {
    const ahead = ray(camera, at(gripAlong + 1)).direction;
    const square = normalise(subtract(ahead, scale(sight.direction, dot(ahead, sight.direction))));
    if (!square) return "bad-observation";
    return { grip: gripInWorld, toHead: add(scale(square, Math.cos(last)), scale(sight.direction, Math.sin(last))) };
  }

  const seenAlong = (head.at.x - grip.x) * direction.x + (head.at.y - grip.y) * direction.y;
  const headSight = ray(camera, at(seenAlong + last));
  const toLens = subtract(headSight.origin, gripInWorld);
  const middle = -dot(toLens, headSight.direction);
  const reach = length + longer;
  const square = dot(toLens, toLens) - middle * middle;
  const half = Math.sqrt(Math.max(0, reach * reach - square));
  const headInWorld = along(headSight.origin, headSight.direction, middle + lean * half);
  if (!(middle + lean * half > 0)) return "behind-camera";
  const toHead = normalise(subtract(headInWorld, gripInWorld));
  return toHead ? { grip: gripInWorld, toHead } : "bad-observation";
}

function distanceTo(origin: Vector, direction: Vector, depth: DepthPrior, deeper: number): number | null {
  if (depth.kind === "distance") return depth.distance + deeper;
  if (Math.abs(direction.x) < 1e-3) return null;
  return (depth.x + deeper - origin.x) / direction.x;
}

/** Half the difference of two places as grip x, y, z, azimuth, elevation. */
function halfDifference(up: Placed, down: Placed): number[] {
  const a = anglesOf(down.toHead);
  const b = anglesOf(up.toHead);
  return [
    (up.grip.x - down.grip.x) / 2,
    (up.grip.y - down.grip.y) / 2,
    (up.grip.z - down.grip.z) / 2,
    angleBetween(a.azimuth, b.azimuth) / 2,
    wrapAngle(radians(b.elevation - a.elevation)) / 2,
  ];
}

function sumOfSquares(columns: readonly (readonly number[])[]): number[] {
  const covariance = new Array<number>(25).fill(0);
  for (let i = 0; i < 5; i++) {
    for (let j = 0; j < 5; j++) {
      for (const column of columns) {
        covariance[5 * i + j] = (covariance[5 * i + j] ?? 0) + (column[i] ?? 0) * (column[j] ?? 0);
      }
    }
  }
  return covariance;
}

const refuse = (reason: LiftRefusal): Lift => ({ ok: false, reason });
