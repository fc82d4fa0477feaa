import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import { lookAtCamera, type LookAt } from "@overcue/shared-geometry/look-at-camera";
import { imagePoint, worldPoint } from "@overcue/shared-geometry/point";
import { stickEnds } from "@overcue/shared-geometry/station-model";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { stickBetween, type StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels, radians } from "@overcue/shared-geometry/units";

/** A phone where it should be, changed as the test wants. */
export function phone(settings: StationSettings, change: Partial<LookAt> = {}): Camera {
  return lookAtCamera({
    position: worldPoint(-3.6, 0.5, 0.95),
    target: worldPoint(1, 0.5, 0.9),
    roll: radians(0.01),
    focal: pixels(990),
    width: pixels(720),
    height: pixels(1280),
    handed: settings.handed,
    ...change,
  });
}

type Laid = readonly [number, number, number];

/** The sticks exactly as a camera sees them; `laid` moves one along, across (metres) and turns it (radians). */
export function markedSticks(
  camera: Camera,
  settings: StationSettings,
  laid: Partial<Record<StationLine, Laid>> = {},
): StickInImage[] {
  return settings.sticksPresent.map((line) => {
    const ends = stickEnds(line, settings, laid[line] ?? [0, 0, 0]);
    const near = project(camera, ends.near);
    const far = project(camera, ends.far);
    if (!near || !far) throw new Error("a stick behind the lens");
    return stickBetween(line, imagePoint(near.x, near.y), imagePoint(far.x, far.y));
  });
}
