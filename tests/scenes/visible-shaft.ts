import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { Canvas } from "./canvas.ts";
import { bowAt } from "./golfer/bow-at.ts";
import { onShaft } from "./golfer/club-pieces.ts";
import type { SceneSettings } from "./scene-settings.ts";
import { see, type View } from "./view.ts";

const samples = 40;
/** The grip's rubber ends a little below this share of the club; what lies above is under the hands. */
const bareFrom = 0.28;

/** Share and length of the bare shaft that the painted canvas shows: inside the picture and in front of what was painted there. */
export function visibleShaft(
  motion: DemoMotion,
  view: View,
  t: number,
  settings: SceneSettings,
  canvas: Canvas,
): { readonly visible: number; readonly visiblePixels: number } {
  const { club } = motion.at(t / 1000);
  if (!club) return { visible: 0, visiblePixels: 0 };
  const bow = bowAt(motion, t, settings.bowAtFullSpeed);
  const at = (step: number) =>
    see(view, onShaft(club.butt, club.head, bow, bareFrom + (1 - bareFrom) * (step / samples)));
  let shown = 0;
  let pixels = 0;
  for (let step = 0; step < samples; step++) {
    const near = at(step);
    const far = at(step + 1);
    const column = Math.floor((near.x + far.x) / 2);
    const row = Math.floor((near.y + far.y) / 2);
    if (column < 0 || row < 0 || column >= canvas.width || row >= canvas.height) continue;
    if ((canvas.depth[row * canvas.width + column] ?? 0) < (near.depth + far.depth) / 2 - 0.04) continue;
    shown++;
    pixels += Math.hypot(far.x - near.x, far.y - near.y);
  }
  return { visible: shown / samples, visiblePixels: pixels };
}
