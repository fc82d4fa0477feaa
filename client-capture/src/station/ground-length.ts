import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import { ray } from "@overcue/shared-geometry/camera-ray";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";

/**
 * Where a bar of a known length on the ground would end in the picture, given one of its ends and a place in the direction of the other.
 * Null where one of them is not seen on the ground, or the bar would reach behind the lens.
 */
export function otherEnd(
  camera: Camera,
  end: Point<"image">,
  towards: Point<"image">,
  length: number,
): Point<"image"> | null {
  const from = onGround(camera, end);
  const to = onGround(camera, towards);
  if (!from || !to) return null;
  const share = length / Math.hypot(to.x - from.x, to.y - from.y);
  return project(camera, worldPoint(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), 0));
}

/** Length on the ground between two places of the picture, metres; infinite where one of them is above the horizon. */
export function groundLength(camera: Camera, a: Point<"image">, b: Point<"image">): number {
  const from = onGround(camera, a);
  const to = onGround(camera, b);
  return from && to ? Math.hypot(to.x - from.x, to.y - from.y) : Infinity;
}

function onGround(camera: Camera, at: Point<"image">): { readonly x: number; readonly y: number } | null {
  const { origin, direction } = ray(camera, at);
  if (!(direction.z < -1e-3)) return null;
  const along = -origin.z / direction.z;
  return { x: origin.x + along * direction.x, y: origin.y + along * direction.y };
}
