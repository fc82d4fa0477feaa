import type { Camera } from "@overcue/shared-geometry/camera";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import type { Point } from "@overcue/shared-geometry/point";
import type { Handed } from "@overcue/shared-geometry/station";
import { pixels } from "@overcue/shared-geometry/units";
import { placeInPicture } from "./place-in-picture.ts";

/** Where the ball's mark starts out: where the solved camera, or a usually placed phone, would see it. */
export function guessBall(
  solved: Camera | null,
  handed: Handed,
  picture: { readonly width: number; readonly height: number },
): Point<"image"> {
  return placeInPicture(solved ?? defaultCamera(pixels(picture.width), pixels(picture.height), handed), 0, 0);
}
