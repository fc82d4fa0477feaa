import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import { imagePoint, worldPoint, type Point } from "@overcue/shared-geometry/point";

/** Where a place on the ground is seen, brought inside of the picture so that a thumb can reach it. */
export function placeInPicture(camera: Camera, x: number, y: number): Point<"image"> {
  const at = project(camera, worldPoint(x, y, 0)) ?? imagePoint(camera.width / 2, camera.height / 2);
  const clamp = (value: number, size: number): number => Math.min(0.96 * size, Math.max(0.04 * size, value));
  return imagePoint(clamp(at.x, camera.width), clamp(at.y, camera.height));
}
