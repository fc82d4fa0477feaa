import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { Vector } from "@overcue/shared-geometry/vector";
import { bowAt } from "./golfer/bow-at.ts";
import { onShaft } from "./golfer/club-pieces.ts";
import { see, type Seen, type View } from "./view.ts";

const samples = 40;
/** The grip's rubber ends a little below this share of the club; what lies above is under the hands. */
const bareFrom = 0.28;

/** How much of the bare shaft can be seen: its share, and its length in pixels. */
export interface VisibleShaft {
  readonly visible: number;
  readonly visiblePixels: number;
}

/** The part of the bare shaft that lies inside the picture and is not behind something, as `isBehind` tells of a place on it. */
export function visibleShaft(
  motion: DemoMotion,
  view: View,
  t: number,
  bowAtFullSpeed: number,
  isBehind: (place: Vector, seen: Seen) => boolean,
): VisibleShaft {
  const { club } = motion.at(t / 1000);
  if (!club) return { visible: 0, visiblePixels: 0 };
  const bow = bowAt(motion, t, bowAtFullSpeed);
  const at = (step: number): Vector => onShaft(club.butt, club.head, bow, bareFrom + (1 - bareFrom) * (step / samples));
  let shown = 0;
  let pixels = 0;
  for (let step = 0; step < samples; step++) {
    const place = at(step + 0.5);
    const middle = see(view, place);
    const { width, height } = view.camera;
    if (middle.x < 0 || middle.y < 0 || middle.x >= width || middle.y >= height) continue;
    if (isBehind(place, middle)) continue;
    const [near, far] = [see(view, at(step)), see(view, at(step + 1))];
    shown++;
    pixels += Math.hypot(far.x - near.x, far.y - near.y);
  }
  return { visible: shown / samples, visiblePixels: pixels };
}
