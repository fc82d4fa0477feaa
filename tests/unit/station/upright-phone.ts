import type { Camera } from "@overcue/shared-geometry/camera";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import type { Handed } from "@overcue/shared-geometry/station";
import { pixels, radians } from "@overcue/shared-geometry/units";

type Place = readonly [x: number, y: number, z: number];

/** An upright phone with a usual lens, 720 x 1280, at a place and looking at another, metres; `roll` in radians. */
export const uprightPhone = (position: Place, target: Place, roll: number, handed: Handed = "right"): Camera =>
  lookAtCamera({
    position: worldPoint(...position),
    target: worldPoint(...target),
    roll: radians(roll),
    focal: pixels(972),
    width: pixels(720),
    height: pixels(1280),
    handed,
  });
