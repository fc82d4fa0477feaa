import type { Rectangle } from "../canvas.ts";
import { columnsAtRow, endsAtRow, rowsOf, rowWeights, type Sweep } from "./sweep.ts";

const weights = new Float64Array(3);
const ends = new Float64Array(4);
const span = new Float64Array(2);

/**
 * Marks the piece in a mask of how much sun each pixel has lost (0 none, 1 all): the deeper of what was there and this,
 * so that overlapping shadows darken once. `soft` is the half-width of its edge in pixels.
 */
export function paintShadow(
  mask: Float32Array,
  width: number,
  height: number,
  sweep: Sweep,
  soft: number,
  within: Rectangle,
): void {
  const [first, last] = rowsOf(sweep, soft + 1);
  const reach = Math.max(sweep.radiusA, sweep.radiusB) + soft + 1;
  for (let row = Math.max(within.top, first); row < Math.min(within.bottom, last + 1); row++) {
    const y = row + 0.5;
    rowWeights(y, height, weights);
    endsAtRow(sweep, weights, ends);
    columnsAtRow(ends, y, reach, span);
    const ax = ends[0] ?? 0;
    const ay = ends[1] ?? 0;
    const alongX = (ends[2] ?? 0) - ax;
    const alongY = (ends[3] ?? 0) - ay;
    const square = alongX * alongX + alongY * alongY;
    const inverse = square > 1e-9 ? 1 / square : 0;
    const right = Math.min(within.right - 1, Math.ceil(span[1] ?? 0));
    for (let column = Math.max(within.left, Math.floor(span[0] ?? 0)); column <= right; column++) {
      const pixel = row * width + column;
      const before = mask[pixel] ?? 0;
      if (before === 1) continue;
      const px = column + 0.5 - ax;
      const py = y - ay;
      const share = Math.min(1, Math.max(0, (px * alongX + py * alongY) * inverse));
      const dx = px - share * alongX;
      const dy = py - share * alongY;
      const away = Math.sqrt(dx * dx + dy * dy);
      const radius = sweep.radiusA + share * (sweep.radiusB - sweep.radiusA);
      const thin = Math.min(1, radius / soft);
      const lost = Math.min(1, Math.max(0, (radius - away) / (2 * soft) + 0.5)) * thin;
      if (lost > before) mask[pixel] = lost;
    }
  }
}
