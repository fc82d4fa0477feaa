import type { Camera } from "@overcue/shared-geometry/camera";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import { pixels } from "@overcue/shared-geometry/units";
import type { Configuration } from "./configuration.ts";

/** The camera to read this picture through: the solved one where there is one, else the assumed one for the picture's size. */
export function cameraFor(
  { camera, settings }: Configuration,
  picture: { readonly width: number; readonly height: number },
): Camera {
  return camera ?? defaultCamera(pixels(picture.width), pixels(picture.height), settings.handed);
}
