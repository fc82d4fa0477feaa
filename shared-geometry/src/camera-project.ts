import type { Camera } from "./camera.ts";
import { imagePoint, type Point } from "./point.ts";

/** Nearer than this in front of the lens (metres) nothing has a place in the picture. */
const nearest = 1e-6;

/**
 * Where a point of the world appears in the picture, in pixels; null at or behind the lens.
 * Pinhole without distortion (Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 6.1).
 * The point may lie outside of the picture's edges.
 */
export function project(camera: Camera, point: Point<"world">): Point<"image"> | null {
  const [rxx, rxy, rxz, ryx, ryy, ryz, rzx, rzy, rzz] = camera.rotation;
  const dx = point.x - camera.position.x;
  const dy = point.y - camera.position.y;
  const dz = point.z - camera.position.z;
  const depth = rzx * dx + rzy * dy + rzz * dz;
  if (!(depth > nearest)) return null;
  const x = camera.principal.x + (camera.focal * (rxx * dx + rxy * dy + rxz * dz)) / depth;
  const y = camera.principal.y + (camera.focal * (ryx * dx + ryy * dy + ryz * dz)) / depth;
  return imagePoint(camera.handed === "left" ? camera.width - x : x, y);
}
