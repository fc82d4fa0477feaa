import type { Camera } from "@overcue/shared-geometry/camera";
import { usualFocalPerShortSide } from "@overcue/shared-geometry/default-camera";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import type { Handed } from "@overcue/shared-geometry/station";
import { pixels, radians } from "@overcue/shared-geometry/units";

/** The virtual phone of the demonstration: set up with care but, like every real one, not just where the default camera stands. */
export function demoCamera(width: number, height: number, handed: Handed): Camera {
  return lookAtCamera({
    position: worldPoint(-3.7, 0.46, 0.96),
    target: worldPoint(1, 0.52, 0.93),
    roll: radians(0.008),
    focal: pixels(usualFocalPerShortSide * Math.min(width, height)),
    width: pixels(width),
    height: pixels(height),
    handed,
  });
}
