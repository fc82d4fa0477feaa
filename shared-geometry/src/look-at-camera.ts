import type { Camera } from "./camera.ts";
import { imagePoint, type Point } from "./point.ts";
import type { Handed } from "./station.ts";
import type { Pixels, Radians } from "./units.ts";
import { cross, normalise, subtract } from "./vector.ts";

export interface LookAt {
  readonly position: Point<"world">;
  /** The point of the world in the middle of the picture. */
  readonly target: Point<"world">;
  /** Turn of the camera about its own axis, clockwise as its holder sees it. */
  readonly roll: Radians;
  readonly focal: Pixels;
  readonly width: Pixels;
  readonly height: Pixels;
  readonly handed: Handed;
}

/**
 * A camera that stands at `position` and looks at `target`, its principal point in the middle of the picture.
 * @throws RangeError where position and target coincide or the camera would look straight up or down.
 */
export function lookAtCamera(options: LookAt): Camera {
  const forward = normalise(subtract(options.target, options.position));
  const level = forward && normalise(cross(forward, { x: 0, y: 0, z: 1 }));
  if (!forward || !level) throw new RangeError("lookAtCamera: needs a direction that is not straight up or down");
  const down = cross(forward, level);
  const cos = Math.cos(options.roll);
  const sin = Math.sin(options.roll);
  return {
    width: options.width,
    height: options.height,
    focal: options.focal,
    principal: imagePoint(options.width / 2, options.height / 2),
    position: options.position,
    rotation: [
      cos * level.x + sin * down.x,
      cos * level.y + sin * down.y,
      cos * level.z + sin * down.z,
      cos * down.x - sin * level.x,
      cos * down.y - sin * level.y,
      cos * down.z - sin * level.z,
      forward.x,
      forward.y,
      forward.z,
    ],
    handed: options.handed,
  };
}
