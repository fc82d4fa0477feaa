import { usualFocalPerShortSide } from "@overcue/shared-geometry/default-camera";
import type { CameraHints } from "./find-sticks.ts";

/** Of a phone's usual picture, which is 9 to 16: the full width of the sensor is filmed whatever is cut off above and below. */
const usualFocalPerLongSide = (usualFocalPerShortSide * 9) / 16;

/** Lenses differ by this much from phone to phone, one sd of the focal length's logarithm. Common practice, no source. */
const lensSd = 0.15;

/** The focal length that the track's size and zoom speak for, as the solver takes it. `zoom`: 1 is the usual lens. */
export function focalHint({
  width,
  height,
  zoom,
}: {
  readonly width: number;
  readonly height: number;
  readonly zoom: number;
}): NonNullable<CameraHints["focal"]> {
  return { focal: usualFocalPerLongSide * Math.max(width, height) * zoom, relativeSd: lensSd };
}
