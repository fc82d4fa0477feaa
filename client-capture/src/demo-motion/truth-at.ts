import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import { milliseconds, radians } from "@overcue/shared-geometry/units";
import type { DemoMotion } from "./demo-motion.ts";
import type { DemoTruth } from "./demo-truth.ts";

/** The club as it really is at `t` seconds, in the world and in the picture; null with empty hands or behind the lens. */
export function truthAt(motion: DemoMotion, camera: Camera, t: number): DemoTruth | null {
  const { club } = motion.at(t);
  if (!club) return null;
  const gripInPicture = project(camera, club.grip);
  const headInPicture = project(camera, club.head);
  if (!gripInPicture || !headInPicture) return null;
  return {
    t: milliseconds(t * 1000),
    grip: club.grip,
    butt: club.butt,
    head: club.head,
    toHead: club.toHead,
    gripInPicture,
    headInPicture,
    angleInPicture: radians(Math.atan2(headInPicture.y - gripInPicture.y, headInPicture.x - gripInPicture.x)),
    rep: motion.repAt(t),
  };
}
