import { blend, type Canvas, type Rectangle } from "../canvas.ts";
import type { Colour } from "../colour.ts";
import { lightOn, type Light } from "../light.ts";
import type { Tile } from "../noise-tile.ts";
import { columnsAtRow, endsAtRow, rowsOf, rowWeights, type Sweep } from "./sweep.ts";

/** A round, shaded, textured piece of body: a tapered cylinder with round ends. */
export interface Limb {
  readonly kind: "limb";
  readonly sweep: Sweep;
  readonly colour: Colour;
  /** Depth of the cloth's folds and weave, as a share of the colour; cells of the tile per radius. */
  readonly texture: { readonly tile: Tile; readonly strength: number; readonly cells: number; readonly offset: number };
  /** Metres that one pixel measures here, for the depth of the round surface. */
  readonly metresPerPixel: number;
}

const weights = new Float64Array(3);
const ends = new Float64Array(4);
const span = new Float64Array(2);
const lit = new Float64Array(3);

/** Paints the limb where it lies nearer than what is there. Edge pixels get their share of cover. */
export function paintLimb(canvas: Canvas, limb: Limb, light: Light, within: Rectangle): void {
  const { sweep, colour, texture } = limb;
  const [first, last] = rowsOf(sweep, 1);
  const { tile } = texture;
  const mask = tile.side - 1;
  const reach = Math.max(sweep.radiusA, sweep.radiusB) + 1;
  const radiusSlope = sweep.radiusB - sweep.radiusA;
  const depthSlope = sweep.depthB - sweep.depthA;
  for (let row = Math.max(within.top, first); row < Math.min(within.bottom, last + 1); row++) {
    const y = row + 0.5;
    rowWeights(y, canvas.height, weights);
    endsAtRow(sweep, weights, ends);
    columnsAtRow(ends, y, reach, span);
    const ax = ends[0] ?? 0;
    const ay = ends[1] ?? 0;
    const alongX = (ends[2] ?? 0) - ax;
    const alongY = (ends[3] ?? 0) - ay;
    const square = alongX * alongX + alongY * alongY;
    const length = Math.sqrt(square);
    const inverse = square > 1e-9 ? 1 / square : 0;
    const right = Math.min(within.right - 1, Math.ceil(span[1] ?? 0));
    for (let column = Math.max(within.left, Math.floor(span[0] ?? 0)); column <= right; column++) {
      const px = column + 0.5 - ax;
      const py = y - ay;
      const share = Math.min(1, Math.max(0, (px * alongX + py * alongY) * inverse));
      const dx = px - share * alongX;
      const dy = py - share * alongY;
      const away = Math.sqrt(dx * dx + dy * dy);
      const radius = sweep.radiusA + share * radiusSlope;
      const cover = Math.min(1, radius - away + 0.5);
      if (cover <= 0) continue;
      const nx = dx / Math.max(radius, away);
      const ny = dy / Math.max(radius, away);
      const nz = -Math.sqrt(Math.max(0, 1 - nx * nx - ny * ny));
      const depth = sweep.depthA + share * depthSlope + nz * radius * limb.metresPerPixel;
      const pixel = row * canvas.width + column;
      if (depth > (canvas.depth[pixel] ?? 0)) continue;
      lightOn(light, nx, ny, nz, lit);
      const along = (share * length * texture.cells) / radius + texture.offset;
      const around = ((dx * alongY - dy * alongX) / (length * radius + 1e-9)) * texture.cells + 2 * texture.offset;
      const cell = (Math.floor(along) & mask) * tile.side + (Math.floor(around) & mask);
      const weave = Math.max(0.2, 1 + texture.strength * (tile.values[cell] ?? 0));
      blend(
        canvas,
        pixel,
        colour[0] * weave * (lit[0] ?? 0),
        colour[1] * weave * (lit[1] ?? 0),
        colour[2] * weave * (lit[2] ?? 0),
        cover,
      );
      if (cover > 0.5) canvas.depth[pixel] = depth;
    }
  }
}
