import type { SlowBackground } from "./slow-background.ts";
import type { WorkPicture } from "./work-picture.ts";

const reach = 3;
const span = 2 * reach + 1;
const costs = new Float64Array(span * span);
const readings = 1500;
/** Differences above this say that something else is there now, and no more than that. In quarters of a grey level. */
const most = 100;

/**
 * Finds how far the camera has swayed against the background, by the shift at which a thin grid of pixels differs least, and writes it to
 * `background.swayX`, `swayY` (working pixels; the picture shows at x what the background has at x - swayX). Looks about the last sway,
 * `reach` pixels a picture and three times over where it runs off.
 */
export function alignBackground(background: SlowBackground, picture: WorkPicture): void {
  let x = Math.round(background.swayX);
  let y = Math.round(background.swayY);
  for (let attempt = 0; attempt < 3; attempt++) {
    const best = compareShifts(background, picture, x, y);
    const dx = (best % span) - reach;
    const dy = Math.floor(best / span) - reach;
    x += dx;
    y += dy;
    if (Math.abs(dx) < reach && Math.abs(dy) < reach) {
      background.swayX = x + fraction(best, 1, dx);
      background.swayY = y + fraction(best, span, dy);
      return;
    }
  }
  background.swayX = x;
  background.swayY = y;
}

/** Clipped mean difference for each shift about (`x`, `y`) into `costs`; returns where it is least. */
function compareShifts(background: SlowBackground, picture: WorkPicture, x: number, y: number): number {
  const { width, height, values } = picture;
  const mean = background.values;
  const border = reach + 1 + Math.max(Math.abs(x), Math.abs(y));
  const step = Math.max(1, Math.floor(Math.sqrt((width * height) / readings)));
  costs.fill(0);
  for (let row = border; row < height - border; row += step) {
    for (let column = border; column < width - border; column += step) {
      const now = values[row * width + column] as number;
      for (let dy = 0; dy < span; dy++) {
        const from = (row - y - dy + reach) * width + column - x + reach;
        for (let dx = 0; dx < span; dx++) {
          const away = Math.abs(now - (mean[from - dx] as number));
          costs[dy * span + dx] = (costs[dy * span + dx] as number) + (away < most ? away : most);
        }
      }
    }
  }
  // What does not move must not be moved by noise: the middle wins unless another shift is clearly better.
  let best = reach * span + reach;
  let least = (costs[best] as number) * 0.99;
  for (let i = 0; i < span * span; i++) {
    if ((costs[i] as number) < least) {
      least = costs[i] as number;
      best = i;
    }
  }
  return best;
}

/** Fraction of a pixel by the two straight flanks beside the least cost (absolute differences make a V); small ones count as none. */
function fraction(best: number, stride: number, away: number): number {
  if (Math.abs(away) >= reach) return 0;
  const here = costs[best] as number;
  const below = (costs[best - stride] as number) - here;
  const above = (costs[best + stride] as number) - here;
  const steeper = Math.max(below, above);
  if (steeper <= 0) return 0;
  const part = (0.5 * (below - above)) / steeper;
  return Math.abs(part) < 0.15 ? 0 : part;
}
