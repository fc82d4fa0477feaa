import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { stickBetween, type StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import { placeInPicture } from "./place-in-picture.ts";

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
  return stickBetween(line, placeInPicture(camera, -half, y), placeInPicture(camera, half, y));
}
