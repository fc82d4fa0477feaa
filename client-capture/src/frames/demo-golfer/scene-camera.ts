import { Matrix4, PerspectiveCamera } from "three";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { PictureWindow } from "./picture-window.ts";

const near = 0.05;
const far = 2000;

export interface SceneCamera {
  readonly drawn: PerspectiveCamera;
  /** Multiply the scene's y by it. */
  readonly mirror: 1 | -1;
  /** Draw this part of the picture from now on. */
  look(window: PictureWindow): void;
}

/**
 * The same pinhole as shared-geometry's `project`, for drawing a window of its picture: a point lands on the same place to the fraction of
 * a pixel, picture edges at 0 and `width` (not at pixel middles).
 *
 * A left-handed golfer's picture is the mirrored picture of a right-handed one. The mirror is put into the world and the camera is
 * mirrored with it, so that no triangle turns its back.
 */
export function sceneCamera(camera: Camera): SceneCamera {
  const left = camera.handed === "left";
  const mirror = left ? -1 : 1;
  const [rx, ry, rz, dx, dy, dz, fx, fy, fz] = camera.rotation;
  const drawn = new PerspectiveCamera();
  drawn.matrixAutoUpdate = false;
  drawn.matrix.set(
    ...[mirror * rx, -dx, -fx, camera.position.x],
    ...[ry, -mirror * dy, -mirror * fy, mirror * camera.position.y],
    ...[mirror * rz, -dz, -fz, camera.position.z],
    ...[0, 0, 0, 1],
  );
  drawn.matrixWorldAutoUpdate = false;
  drawn.matrixWorld.copy(drawn.matrix);
  drawn.matrixWorldInverse.copy(drawn.matrix).invert();
  const across = left ? camera.width - camera.principal.x : camera.principal.x;
  return {
    drawn,
    mirror,
    look: (window) => {
      drawn.projectionMatrix.copy(frustum(camera, window, across));
      drawn.projectionMatrixInverse.copy(drawn.projectionMatrix).invert();
    },
  };
}

function frustum(camera: Camera, window: PictureWindow, principalX: number): Matrix4 {
  const scale = near / camera.focal;
  return new Matrix4().makePerspective(
    (window.left - principalX) * scale,
    (window.left + window.width - principalX) * scale,
    (camera.principal.y - window.top) * scale,
    (camera.principal.y - window.top - window.height) * scale,
    near,
    far,
  );
}
