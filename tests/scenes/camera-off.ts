import type { Camera } from "@overcue/shared-geometry/camera";
import { angleApart } from "@overcue/shared-geometry/rotation";

/** How far a camera that was found is from the true one: its place, metres, and its aim, degrees. */
export function cameraOff(
  { position, rotation }: Camera,
  truth: Camera,
): { readonly metres: number; readonly degrees: number } {
  const { x, y, z } = truth.position;
  return {
    metres: Math.hypot(position.x - x, position.y - y, position.z - z),
    degrees: (angleApart(rotation, truth.rotation) * 180) / Math.PI,
  };
}
