import { project } from "@overcue/shared-geometry/camera-project";
import { ray } from "@overcue/shared-geometry/camera-ray";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { Direction } from "@overcue/shared-geometry/world-shaft";
import type { Vector } from "@overcue/shared-geometry/vector";

/** A place in the picture with its distance along the camera's axis, metres. */
export interface Seen {
  readonly x: number;
  readonly y: number;
  readonly depth: number;
}

/** A direction in the camera's axes: x right, y down, z forward. */
export type ViewDirection = readonly [number, number, number];

/** A camera whose picture the phone's sway has moved by so many pixels. */
export interface View {
  readonly camera: Camera;
  readonly shiftX: number;
  readonly shiftY: number;
}

/** Nearer than this (metres) nothing is drawn at its true size. */
const nearest = 0.05;

/** Where a world point is seen, with its depth. What lies nearer than 5 cm or behind is taken to lie 5 cm off, far out of the picture. */
export function see(view: View, point: Vector): Seen {
  const { camera } = view;
  const [, , depth] = turnToView(camera, {
    x: point.x - camera.position.x,
    y: point.y - camera.position.y,
    z: point.z - camera.position.z,
  });
  const seen = depth < nearest ? null : project(camera, point);
  if (!seen) return { x: -1e5, y: 1e5, depth: nearest };
  return { x: seen.x + view.shiftX, y: seen.y + view.shiftY, depth };
}

/** A world direction in the camera's axes, mirrored as the picture is where the golfer is left-handed. */
export function seeDirection(view: View, direction: Vector): ViewDirection {
  const [x, y, z] = turnToView(view.camera, direction);
  return view.camera.handed === "left" ? [-x, y, z] : [x, y, z];
}

/** The world direction of the ray through a place in the picture, unit length. */
export function rayThrough(view: View, x: number, y: number): Direction {
  return ray(view.camera, { x: x - view.shiftX, y: y - view.shiftY }).direction;
}

/** Length in pixels of one metre across the line of sight. */
export const pixelsPerMetre = (view: View, depth: number): number => view.camera.focal / depth;

function turnToView(camera: Camera, vector: Vector): ViewDirection {
  const r = camera.rotation;
  return [
    r[0] * vector.x + r[1] * vector.y + r[2] * vector.z,
    r[3] * vector.x + r[4] * vector.y + r[5] * vector.z,
    r[6] * vector.x + r[7] * vector.y + r[8] * vector.z,
  ];
}
