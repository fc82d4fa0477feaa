import { angleBetween } from "@overcue/shared-geometry/angle";
import { radians } from "@overcue/shared-geometry/units";
import type { SlowBackground } from "./background-state.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import type { WorkPicture } from "./work-picture.ts";

/** A shaft as it was found: picture pixels, radians, milliseconds. `reach`: how far it goes from (x, y). */
export interface FoundShaft {
  t: number;
  x: number;
  y: number;
  angle: number;
  reach: number;
}

/** Where the shaft came to rest, at `t`, without the sway, and until when it was seen there. Changed in place; `angle` NaN before any was found. */
export interface RestedShaft extends FoundShaft {
  until: number;
}

export const noRestedShaft = (): RestedShaft => ({ t: 0, until: 0, x: 0, y: 0, angle: Number.NaN, reach: 0 });

/**
 * A shaft that rests is taken into the standing background, and stays in it for seconds after it has left: what it covered would look new. Once the shaft is found elsewhere, what is seen where it
 * rested takes the place of the mean there. `torso` in picture pixels; `picture` is the one that `shaft` was found in.
 */
export function uncoverBackground(
  rested: RestedShaft,
  background: SlowBackground,
  picture: WorkPicture,
  shaft: FoundShaft,
  torso: number,
  tuning: ShaftTuning,
): void {
  const x = shaft.x - background.swayX * picture.factor;
  const y = shaft.y - background.swayY * picture.factor;
  const turned = Math.abs(angleBetween(radians(rested.angle), radians(shaft.angle)));
  if (turned < tuning.restTurn && Math.hypot(x - rested.x, y - rested.y) < tuning.restWay * torso) {
    rested.until = shaft.t;
    rested.reach = Math.max(rested.reach, shaft.reach);
    return;
  }
  const hasRested = rested.until - rested.t >= 1000 * tuning.restFor;
  if (hasRested && turned < tuning.restLeft) return;
  if (hasRested) uncover(rested, background, picture, (tuning.restWide * torso) / picture.factor);
  Object.assign(rested, { ...shaft, x, y, until: shaft.t });
}

/** `wide`: how far beside its line, and beyond its end, working pixels. */
function uncover(shaft: FoundShaft, background: SlowBackground, picture: WorkPicture, wide: number): void {
  const { width, height, factor, values } = picture;
  const long = shaft.reach / factor + wide;
  const [fromX, fromY] = [shaft.x / factor - 0.5, shaft.y / factor - 0.5];
  const [cos, sin] = [Math.cos(shaft.angle), Math.sin(shaft.angle)];
  const [toX, toY] = [fromX + cos * long, fromY + sin * long];
  const swayX = Math.round(background.swayX);
  const swayY = Math.round(background.swayY);
  const top = Math.max(0, -swayY, Math.floor(Math.min(fromY, toY) - wide));
  const bottom = Math.min(height - 1, height - 1 - swayY, Math.ceil(Math.max(fromY, toY) + wide));
  const left = Math.max(0, -swayX, Math.floor(Math.min(fromX, toX) - wide));
  const right = Math.min(width - 1, width - 1 - swayX, Math.ceil(Math.max(fromX, toX) + wide));
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      const along = (x - fromX) * cos + (y - fromY) * sin;
      const across = (y - fromY) * cos - (x - fromX) * sin;
      if (along < 0 || along > long || Math.abs(across) > wide) continue;
      const seen = values[(y + swayY) * width + x + swayX] as number;
      background.values[y * width + x] = seen;
      background.rounded[y * width + x] = seen;
    }
  }
}
