import { ray } from "./camera-ray.ts";
import type { Camera } from "./camera.ts";
import type { DepthPrior, LiftObservation } from "./lift-observation.ts";
import { imagePoint, worldPoint, type Point } from "./point.ts";
import { along, dot, normalise, scale, subtract, type Vector } from "./vector.ts";
import type { Direction } from "./world-shaft.ts";

/** Why a shaft could not be lifted. A closed list. */
export type LiftRefusal = "depth-undefined" | "behind-camera" | "bad-observation";

/**
 * An observed shaft as seen from the lens: the grip on its line of sight, and the plane through the lens in which the shaft lies.
 * `lean` below is the angle in that plane from `square` towards `sight`: positive with the head farther than the hands.
 */
export interface ShaftView {
  readonly grip: Point<"world">;
  readonly distance: number;
  /** Unit direction from the lens to the grip. */
  readonly sight: Direction;
  /** Unit direction in the plane, square to the line of sight, on the head's side. */
  readonly square: Direction;
  /** Angle at the lens from grip to head, radians, signed towards `square`; null where the head was not seen. */
  readonly spread: number | null;
}

/**
 * Errors added to what was observed, in this order: across the line (px), grip along it (px), its angle (radians, in the picture),
 * depth (m), head along the line (px).
 */
export type ViewErrors = readonly [number, number, number, number, number];
export const noErrors: ViewErrors = [0, 0, 0, 0, 0];

/** How the shaft is seen from the lens. Camera and observation are a right-handed golfer's. */
export function viewShaft(
  camera: Camera,
  { grip, direction, head, depth }: LiftObservation,
  [offset, gripAlong, turn, deeper, headAlong]: ViewErrors,
): ShaftView | LiftRefusal {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  const x = direction.x * cos - direction.y * sin;
  const y = direction.y * cos + direction.x * sin;
  const at = (by: number): Point<"image"> =>
    imagePoint(grip.x + by * x - offset * direction.y, grip.y + by * y + offset * direction.x);

  const { origin, direction: sight } = ray(camera, at(gripAlong));
  const distance = distanceTo(origin, sight, depth, deeper);
  if (distance === null) return "depth-undefined";
  if (!(distance > 0)) return Number.isNaN(distance) ? "bad-observation" : "behind-camera";
  const place = along(origin, sight, distance);

  const ahead = ray(camera, at(gripAlong + 100)).direction;
  const square = normalise(subtract(ahead, scale(sight, dot(ahead, sight))));
  if (!square) return "bad-observation";
  return {
    grip: worldPoint(place.x, place.y, place.z),
    distance,
    sight,
    square,
    spread: head ? spreadTo(camera, sight, square, at(alongLine(head.at, grip, direction) + headAlong)) : null,
  };
}

/** The angle at the lens under which a shaft of a length and a lean spans, radians. */
export function spreadAt(lean: number, length: number, distance: number): number {
  return Math.atan2(length * Math.cos(lean), distance + length * Math.sin(lean));
}

/** The lean at which a shaft spans most: square to the head's line of sight. */
export function widestLean(length: number, distance: number): number {
  return -Math.asin(Math.min(1, length / distance));
}

/** The direction of a lean. */
export function leaning({ sight, square }: Pick<ShaftView, "sight" | "square">, lean: number): Direction {
  return along(scale(square, Math.cos(lean)), sight, Math.sin(lean));
}

function spreadTo(camera: Camera, sight: Vector, square: Vector, head: Point<"image">): number {
  const toHead = ray(camera, head).direction;
  return Math.atan2(dot(toHead, square), dot(toHead, sight));
}

function alongLine(point: Point<"image">, from: Point<"image">, direction: { x: number; y: number }): number {
  return (point.x - from.x) * direction.x + (point.y - from.y) * direction.y;
}

function distanceTo(origin: Vector, direction: Vector, depth: DepthPrior, deeper: number): number | null {
  if (depth.kind === "distance") return depth.distance + deeper;
  if (Math.abs(direction.x) < 1e-3) return null;
  return (depth.x + deeper - origin.x) / direction.x;
}
