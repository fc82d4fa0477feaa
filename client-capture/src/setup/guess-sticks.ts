import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import { imagePoint, worldPoint, type Point } from "@overcue/shared-geometry/point";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { stickBetween, type StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";

/** How far y is the stick of that line, metres from the ball line. */
const distanceOf = (line: StationLine, settings: StationSettings): number =>
  line === "ball-line" ? 0 : line === "toe-line" ? settings.toeLine : settings.heelLine;

/** Where a stick's marks start out before anybody has moved them: as a usually placed phone would see the stick. */
export function guessStick(
  line: StationLine,
  settings: StationSettings,
  picture: { readonly width: number; readonly height: number },
): StickInImage {
  const camera = defaultCamera(pixels(picture.width), pixels(picture.height), settings.handed);
  const y = distanceOf(line, settings);
  const half = settings.stickLength / 2;
  return stickBetween(line, placeIn(camera, -half, y), placeIn(camera, half, y));
}

/** Inside of the picture, so that a thumb can reach it. */
function placeIn(camera: Camera, x: number, y: number): Point<"image"> {
  const at = project(camera, worldPoint(x, y, 0)) ?? imagePoint(camera.width / 2, camera.height / 2);
  const clamp = (value: number, size: number): number => Math.min(0.96 * size, Math.max(0.04 * size, value));
  return imagePoint(clamp(at.x, camera.width), clamp(at.y, camera.height));
}
