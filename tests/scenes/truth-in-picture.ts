import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { DemoTruth } from "@overcue/client-capture/demo-motion/demo-truth";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { milliseconds, radians } from "@overcue/shared-geometry/units";
import type { Vector } from "@overcue/shared-geometry/vector";
import { bowAt } from "./golfer/bow-at.ts";
import { onShaft } from "./golfer/club-pieces.ts";
import { see, type View } from "./view.ts";

/**
 * The club as the picture shows it at mid-exposure: each end where it was when its own row was read, the tip with its bow, the angle
 * that of the line between the two. World values are those of the picture's time `t`, which is that of its middle row.
 */
export function truthInPicture(
  motion: DemoMotion,
  view: View,
  tMs: number,
  readOutMs: number,
  bowAtFullSpeed: number,
): DemoTruth | null {
  const { club } = motion.at(tMs / 1000);
  if (!club) return null;
  const seenOf = (pick: (tMs: number) => Vector): Point<"image"> => {
    let at = see(view, pick(tMs));
    for (let round = 0; round < 4 && readOutMs > 0; round++) {
      const row = Math.min(1, Math.max(0, at.y / view.camera.height));
      at = see(view, pick(tMs + readOutMs * (row - 0.5)));
    }
    return imagePoint(at.x, at.y);
  };
  const gripInPicture = seenOf((when) => motion.at(when / 1000).club?.grip ?? club.grip);
  const headInPicture = seenOf((when) => {
    const there = motion.at(when / 1000).club ?? club;
    return onShaft(there.butt, there.head, bowAt(motion, when, bowAtFullSpeed), 1);
  });
  return {
    t: milliseconds(tMs),
    grip: club.grip,
    butt: club.butt,
    head: club.head,
    toHead: club.toHead,
    gripInPicture,
    headInPicture,
    angleInPicture: radians(Math.atan2(headInPicture.y - gripInPicture.y, headInPicture.x - gripInPicture.x)),
    rep: motion.repAt(tMs / 1000),
  };
}
