import type { Camera } from "./camera.ts";
import type { Point } from "./point.ts";
import type { Direction } from "./world-shaft.ts";

/** A half-line in the world: from `origin`, along `direction` of unit length. */
export interface Ray {
  readonly origin: Point<"world">;
  readonly direction: Direction;
}

/** The half-line of the world that is seen at a point of the picture. The way back of `project`. */
export function ray(camera: Camera, point: Point<"image">): Ray {
  const [rxx, rxy, rxz, ryx, ryy, ryz, rzx, rzy, rzz] = camera.rotation;
  const x = ((camera.handed === "left" ? camera.width - point.x : point.x) - camera.principal.x) / camera.focal;
  const y = (point.y - camera.principal.y) / camera.focal;
  const perLength = 1 / Math.sqrt(x * x + y * y + 1);
  return {
    origin: camera.position,
    direction: {
      x: (rxx * x + ryx * y + rzx) * perLength,
      y: (rxy * x + ryy * y + rzy) * perLength,
      z: (rxz * x + ryz * y + rzz) * perLength,
    },
  };
}
