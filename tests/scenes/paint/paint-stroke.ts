import { blend, type Canvas, type Rectangle } from "../canvas.ts";
import type { Colour } from "../colour.ts";
import { coverBelow } from "./band-cover.ts";
import { columnsAtRow, endsAtRow, rowsOf, rowWeights, type Sweep } from "./sweep.ts";

/** Something long and thin with square ends: shaft, rod, stick, rope, post. */
export interface Stroke {
  readonly kind: "stroke";
  readonly sweep: Sweep;
  /** Colours already lit, across the stroke from its left to its right seen from a to b, evenly spaced. */
  readonly across: readonly Colour[];
  /** Share of what is behind that it hides where it covers a pixel wholly; 1 for a solid thing. */
  readonly cover: number;
  /** Whether it hides what lies behind it from later, farther things. */
  readonly opaque: boolean;
}

const weights = new Float64Array(3);
const ends = new Float64Array(4);
const span = new Float64Array(2);

/** Paints the stroke with the exact share of each pixel that it covers, where it lies nearer than what is there. */
export function paintStroke(canvas: Canvas, stroke: Stroke, within: Rectangle): void {
  const { sweep, across } = stroke;
  const [first, last] = rowsOf(sweep, 2);
  const strips = across.length;
  const reach = Math.max(sweep.radiusA, sweep.radiusB) + 1.5;
  for (let row = Math.max(within.top, first); row < Math.min(within.bottom, last + 1); row++) {
    const y = row + 0.5;
    rowWeights(y, canvas.height, weights);
    endsAtRow(sweep, weights, ends);
    columnsAtRow(ends, y, reach, span);
    const ax = ends[0] ?? 0;
    const ay = ends[1] ?? 0;
    const alongX = (ends[2] ?? 0) - ax;
    const alongY = (ends[3] ?? 0) - ay;
    const length = Math.sqrt(alongX * alongX + alongY * alongY);
    if (length < 1e-6) continue;
    const ux = alongX / length;
    const uy = alongY / length;
    const right = Math.min(within.right - 1, Math.ceil(span[1] ?? 0));
    for (let column = Math.max(within.left, Math.floor(span[0] ?? 0)); column <= right; column++) {
      const px = column + 0.5 - ax;
      const py = y - ay;
      const along = px * ux + py * uy;
      const inLength = coverBelow(along, ux, uy) - coverBelow(along - length, ux, uy);
      if (inLength <= 0) continue;
      const share = Math.min(1, Math.max(0, along / length));
      const radius = sweep.radiusA + share * (sweep.radiusB - sweep.radiusA);
      const side = ux * py - uy * px;
      const pixel = row * canvas.width + column;
      const depth = sweep.depthA + share * (sweep.depthB - sweep.depthA);
      if (depth > (canvas.depth[pixel] ?? 0)) continue;
      let r = 0;
      let g = 0;
      let b = 0;
      let cover = 0;
      let below = coverBelow(-radius - side, ux, uy);
      for (let strip = 0; strip < strips; strip++) {
        const edge = -radius + (2 * radius * (strip + 1)) / strips;
        const next = coverBelow(edge - side, ux, uy);
        const part = next - below;
        below = next;
        if (part <= 0) continue;
        const colour = across[strip];
        if (colour === undefined) continue;
        r += part * colour[0];
        g += part * colour[1];
        b += part * colour[2];
        cover += part;
      }
      if (cover <= 1e-4) continue;
      blend(canvas, pixel, r / cover, g / cover, b / cover, cover * inLength * stroke.cover);
      if (stroke.opaque && cover * inLength > 0.5) canvas.depth[pixel] = depth;
    }
  }
}
