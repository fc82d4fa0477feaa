import type { Camera } from "./camera.ts";
import { at, throughBlock, type ShaftMotion } from "./filter-motion.ts";
import { cross, normalise, subtract } from "./vector.ts";

/** How well a motion knows its own lean, one sd, radians; 0 for a shaft that points at the lens, which has none. */
export function leanSd({ grip, toHead, covariance }: ShaftMotion, camera: Camera): number {
  const axis = normalise(cross(subtract(grip, camera.position), toHead));
  return axis ? Math.sqrt(Math.max(0, throughBlock(covariance, at.direction, at.direction, axis))) : 0;
}
