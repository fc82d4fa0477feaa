import type { Camera } from "@overcue/shared-geometry/camera";
import type { Vector } from "@overcue/shared-geometry/vector";
import type { Body } from "./body.ts";

/**
 * From the middle of some of the figure's joints to the middle of others, metres along the world's axes. The pose model gives its
 * figure in the camera's axes; a left-handed golfer's world is the mirror image.
 */
export function relativeInWorld(body: Body, camera: Camera, to: readonly number[], from: readonly number[]): Vector {
  const a = middle(body, from);
  const b = middle(body, to);
  const x = (b.x - a.x) * (camera.handed === "left" ? -1 : 1);
  const y = b.y - a.y;
  const z = b.z - a.z;
  const [rxx, rxy, rxz, ryx, ryy, ryz, rzx, rzy, rzz] = camera.rotation;
  return { x: rxx * x + ryx * y + rzx * z, y: rxy * x + ryy * y + rzy * z, z: rxz * x + ryz * y + rzz * z };
}

function middle(body: Body, joints: readonly number[]): Vector {
  let x = 0;
  let y = 0;
  let z = 0;
  for (const joint of joints) {
    const at = body.world[joint];
    x += at?.x ?? 0;
    y += at?.y ?? 0;
    z += at?.z ?? 0;
  }
  const count = Math.max(1, joints.length);
  return { x: x / count, y: y / count, z: z / count };
}
