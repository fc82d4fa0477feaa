import type { SlowBackground } from "./background-state.ts";
import type { WorkPicture } from "./work-picture.ts";

const reach = 3;
const span = 2 * reach + 1;
const middle = reach * span + reach;
const scores = new Float64Array(span * span);
/** Pixels that are tried; how much the background must change about one for it to tell a shift, quarters of a grey level; fewest such. */
const readings = 4000;
const leastEdge = 60;
const leastPoints = 40;
/** Slopes count no further than this, lest one glaring edge decide. */
const steepest = 250;
/** A shift must agree better than none by this share: what stands must not be moved by noise. */
const clearly = 1.02;

/**
 * Finds how far the camera has swayed against the background, by the shift at which the picture's slopes agree best with those at the
 * background's edges, and writes it to `background.swayX`, `swayY` (working pixels; the picture shows at x what the background has at
 * x - swayX). Looks about the last sway, `reach` pixels a picture and three times over where it runs off. Slopes are multiplied, not
 * subtracted, so that what moved away since says nothing for any shift.
 */
export function alignBackground(background: SlowBackground, picture: WorkPicture): void {
  let x = Math.round(background.swayX);
  let y = Math.round(background.swayY);
  for (let attempt = 0; attempt < 3; attempt++) {
    const best = scoreShifts(background, picture, x, y);
    const dx = (best % span) - reach;
    const dy = Math.floor(best / span) - reach;
    x += dx;
    y += dy;
    if (Math.abs(dx) < reach && Math.abs(dy) < reach) {
      background.swayX = x + fraction(best, 1);
      background.swayY = y + fraction(best, span);
      return;
    }
  }
  background.swayX = x;
  background.swayY = y;
}

/** Agreement for each shift about (`x`, `y`) into `scores`; returns where it is best. */
function scoreShifts(background: SlowBackground, picture: WorkPicture, x: number, y: number): number {
  const { width, height, values } = picture;
  const mean = background.rounded;
  const border = reach + 2 + Math.max(Math.abs(x), Math.abs(y));
  const step = Math.max(1, Math.floor(Math.sqrt((width * height) / readings)) | 1);
  scores.fill(0);
  let points = 0;
  // The grid is sheared both ways, so that no level or upright edge always meets it on the same side: `step` is odd, so that two pixels further each time
  // comes by all of them.
  let aside = 0;
  for (let grid = border; grid < height - border - step; grid += step) {
    let down = 0;
    aside = (aside + 2) % step;
    for (let column = border + aside; column < width - border; column += step) {
      const at = (grid + down) * width + column;
      down = (down + 2) % step;
      const slopeX = clip((mean[at + 1] as number) - (mean[at - 1] as number));
      const slopeY = clip((mean[at + width] as number) - (mean[at - width] as number));
      if (Math.abs(slopeX) + Math.abs(slopeY) < leastEdge) continue;
      points++;
      for (let dy = 0; dy < span; dy++) {
        const from = at + (y + dy - reach) * width + x - reach;
        for (let dx = 0; dx < span; dx++) {
          const nowX = clip((values[from + dx + 1] as number) - (values[from + dx - 1] as number));
          const nowY = clip((values[from + dx + width] as number) - (values[from + dx - width] as number));
          scores[dy * span + dx] = (scores[dy * span + dx] as number) + slopeX * nowX + slopeY * nowY;
        }
      }
    }
  }
  if (points < leastPoints) return middle;
  let best = middle;
  let most = Math.max(0, scores[middle] as number) * clearly;
  for (let i = 0; i < span * span; i++) {
    if ((scores[i] as number) > most) {
      most = scores[i] as number;
      best = i;
    }
  }
  return best;
}

const clip = (slope: number): number => (slope > steepest ? steepest : slope < -steepest ? -steepest : slope);

/** Fraction of a pixel by a parabola through the best score and its neighbours; small ones, and flat tops, count as none. */
function fraction(best: number, stride: number): number {
  const here = scores[best] as number;
  const below = scores[best - stride] as number;
  const above = scores[best + stride] as number;
  const bend = 2 * here - below - above;
  if (!(bend > 0.01 * Math.abs(here))) return 0;
  const part = (0.5 * (above - below)) / bend;
  return Math.abs(part) < 0.15 ? 0 : Math.max(-0.5, Math.min(0.5, part));
}
