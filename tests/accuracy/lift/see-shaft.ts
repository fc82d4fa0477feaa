import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import { clubHead } from "@overcue/shared-geometry/head-point";
import type { LiftObservation } from "@overcue/shared-geometry/lift-observation";
import { imagePoint } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { metres, milliseconds, pixels, radians } from "@overcue/shared-geometry/units";
import { gaussian, type Random } from "../../scenes/random.ts";
import type { TrueShaft } from "./random-shaft.ts";

export interface ShaftNoise {
  /** Radians in the picture. */
  readonly angle: number;
  /** Metres at the hands' distance: across the line, the grip along it, the head along it, each. */
  readonly place: number;
  /** Metres of the hands along the target line. */
  readonly depth: number;
  /** Metres of the club's length. */
  readonly length: number;
}

/** Half a degree and a centimetre on the shaft, five centimetres on depth; and the length that the club is said to have. */
export const statedNoise: ShaftNoise = { angle: (0.5 * Math.PI) / 180, place: 0.01, depth: 0.05, length: 0.005 };

/** A true shaft as a tracker would see it, off by what the noise says. Null where it is not in front of the camera. */
export function seeShaft(
  camera: Camera,
  settings: StationSettings,
  shaft: TrueShaft,
  noise: ShaftNoise,
  random: Random,
): LiftObservation | null {
  const really = { clubLength: metres(settings.clubLength + gaussian(random) * noise.length) };
  const grip = project(camera, shaft.grip);
  const head = project(camera, clubHead(shaft, really));
  if (!grip || !head) return null;
  const away = Math.hypot(
    shaft.grip.x - camera.position.x,
    shaft.grip.y - camera.position.y,
    shaft.grip.z - camera.position.z,
  );
  const placeSd = pixels((noise.place * camera.focal) / away);
  const seen = Math.hypot(head.x - grip.x, head.y - grip.y);
  const angle = Math.atan2(head.y - grip.y, head.x - grip.x) + gaussian(random) * noise.angle;
  const direction = { x: Math.cos(angle), y: Math.sin(angle) };
  const across = gaussian(random) * placeSd;
  const gripAlong = gaussian(random) * placeSd;
  const headAlong = seen + gaussian(random) * placeSd;
  const at = (along: number) =>
    imagePoint(
      grip.x + along * direction.x - across * direction.y,
      grip.y + along * direction.y + across * direction.x,
    );
  return {
    t: milliseconds(0),
    grip: at(gripAlong),
    gripAlongSd: placeSd,
    offsetSd: placeSd,
    direction,
    angleSd: radians(noise.angle),
    head: { at: at(headAlong), alongSd: placeSd },
    depth: {
      kind: "along-target-line",
      x: metres(shaft.grip.x + gaussian(random) * noise.depth),
      sd: metres(noise.depth),
    },
  };
}
