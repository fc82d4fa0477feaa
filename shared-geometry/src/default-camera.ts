import type { Camera } from "./camera.ts";
import { lookAtCamera } from "./look-at-camera.ts";
import { worldPoint } from "./point.ts";
import type { Handed } from "./station.ts";
import { pixels, radians, type Pixels } from "./units.ts";

/**
 * Focal length over the picture's short side. A phone's main lens is about 26 mm equivalent (0.60 of the picture's diagonal);
 * filmed across the full width of a 4:3 sensor in 16:9 that is 0.75 of the long side, 1.35 of the short one.
 * Common practice, no source; stabilised video crops in by up to a tenth more.
 */
export const usualFocalPerShortSide = 1.35;

const metresBehindBall = 4;
const handLine = 0.55;
const lensHeight = 0.9;

/**
 * The camera that is assumed while none was solved: 4 m behind the ball on the hand line, 0.9 m up, looking level along the
 * target line. Whatever is read through it is marked uncalibrated.
 */
export function defaultCamera(width: Pixels, height: Pixels, handed: Handed): Camera {
  return lookAtCamera({
    position: worldPoint(-metresBehindBall, handLine, lensHeight),
    target: worldPoint(0, handLine, lensHeight),
    roll: radians(0),
    focal: pixels(usualFocalPerShortSide * Math.min(width, height)),
    width,
    height,
    handed,
  });
}
