import { CholeskyDecomposition, Matrix } from "ml-matrix";
import type { Camera } from "./camera.ts";
import { cameraParameters, moveCamera } from "./station-model.ts";

/**
 * How well a camera is known. Seven by seven, row-major, symmetric: position x, y, z (metres), turn about the camera's x, y, z axes
 * (radians), natural logarithm of the focal length.
 */
export type CameraCovariance = readonly number[];

/** A camera and, for each direction of its uncertainty, the camera moved one standard deviation up and down. */
export interface CameraSpread {
  readonly camera: Camera;
  /** The same over the picture of a right-handed golfer, and so are `moved`. */
  readonly upright: Camera;
  readonly moved: readonly { readonly up: Camera; readonly down: Camera }[];
}

/** The cameras one standard deviation away, made once a solve and used on every frame. @throws RangeError for a matrix of another size. */
export function spreadCamera(camera: Camera, covariance: CameraCovariance): CameraSpread {
  if (covariance.length !== cameraParameters ** 2) throw new RangeError("spreadCamera: needs seven by seven numbers");
  const matrix = Matrix.from1DArray(cameraParameters, cameraParameters, Array.from(covariance));
  const factor = new CholeskyDecomposition(matrix).lowerTriangularMatrix;
  const upright: Camera = { ...camera, handed: "right" };
  const moved = Array.from({ length: cameraParameters }, (_, column) => {
    const step = factor.getColumn(column);
    return {
      up: moveCamera(upright, step),
      down: moveCamera(
        upright,
        step.map((value) => -value),
      ),
    };
  });
  return { camera, upright, moved };
}

/** A camera that is taken at its word: the demo golfer's, or the assumed one where everything is marked uncalibrated anyway. */
export const exactCamera = (camera: Camera): CameraSpread => ({
  camera,
  upright: { ...camera, handed: "right" },
  moved: [],
});
