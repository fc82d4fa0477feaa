import type { Canvas } from "../canvas.ts";
import { mixColour, timesColour, type Colour } from "../colour.ts";
import { lightOn, type Light } from "../light.ts";
import { sampleTile, type Tile } from "../noise-tile.ts";
import { rayThrough, type View } from "../view.ts";

/** What the ground is made of: two colours that its unevenness runs between, and how strong it is from coarse to fine. */
export interface Ground {
  readonly low: Colour;
  readonly high: Colour;
  /** Wavelength in metres and strength of each scale of unevenness. */
  readonly scales: readonly { readonly metres: number; readonly strength: number }[];
  /** Mown stripes across the target line: width in metres (0: none) and strength. */
  readonly stripes: { readonly metres: number; readonly strength: number };
  /** Straight boards or paving along the target line: width in metres, 0 for none. */
  readonly boards: number;
  /** Where the ground ends, metres from the ball along the target line. */
  readonly farEnd: number;
  /** Share of the lamp's light that is left at 10 m from the ball; 1 outdoors by day. */
  readonly lampFall: number;
}

/** A flat rectangle of another make lying on the ground: a hitting mat. Metres. */
export interface Mat {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
  readonly colour: Colour;
}

const lit = new Float64Array(3);

/** Paints the ground and the mat on it wherever a ray meets them, and sets the depth there. */
export function paintGround(
  canvas: Canvas,
  view: View,
  ground: Ground,
  mat: Mat | null,
  light: Light,
  tile: Tile,
): void {
  const { camera } = view;
  const [upX, upY, upZ] = light.towardsSky;
  lightOn(light, upX, upY, upZ, lit);
  const level: Colour = [lit[0] ?? 0, lit[1] ?? 0, lit[2] ?? 0];
  for (let row = 0; row < canvas.height; row++) {
    for (let column = 0; column < canvas.width; column++) {
      const along = rayThrough(view, column + 0.5, row + 0.5);
      if (along.z > -1e-4) continue;
      const reach = -camera.position.z / along.z;
      const x = camera.position.x + reach * along.x;
      const y = camera.position.y + reach * along.y;
      if (x > ground.farEnd) continue;
      const across = reach / camera.focal;
      const footprint = across / Math.sqrt(Math.max(0.02, -along.z));
      const inside = mat ? matCover(mat, x, y, across) : 0;
      let colour = inside < 1 ? groundColour(ground, tile, x, y, footprint) : ground.low;
      if (mat && inside > 0) {
        const weave = 1 + 0.16 * fine(tile, x, y, 0.012, footprint) + 0.1 * fine(tile, y, x, 0.07, footprint);
        const worn = 1 - 0.25 * Math.exp(-(x * x + y * y) / 0.03);
        colour = mixColour(colour, timesColour(mat.colour, [weave * worn, weave * worn, weave * worn]), inside);
      }
      const lamp = ground.lampFall ** (Math.hypot(x, y) / 10);
      const pixel = row * canvas.width + column;
      canvas.rgb[pixel * 3] = colour[0] * level[0] * lamp;
      canvas.rgb[pixel * 3 + 1] = colour[1] * level[1] * lamp;
      canvas.rgb[pixel * 3 + 2] = colour[2] * level[2] * lamp;
      canvas.depth[pixel] = Infinity;
    }
  }
}

function groundColour(ground: Ground, tile: Tile, x: number, y: number, footprint: number): Colour {
  let level = 0.5;
  for (const scale of ground.scales) level += scale.strength * fine(tile, x, y, scale.metres, footprint);
  if (ground.stripes.metres > 0) {
    const band = Math.sin((Math.PI * (x + 0.1 * y)) / ground.stripes.metres);
    level += ground.stripes.strength * Math.tanh(4 * band);
  }
  const [r, g, b] = mixColour(ground.low, ground.high, level);
  let gap = 1;
  if (ground.boards > 0) {
    const share = y / ground.boards - Math.floor(y / ground.boards);
    const edge = Math.min(share, 1 - share) * ground.boards;
    gap = 1 - 0.45 * Math.max(0, 1 - edge / Math.max(0.004, footprint));
  }
  return [Math.max(0.002, r) * gap, Math.max(0.002, g) * gap, Math.max(0.002, b) * gap];
}

/** Unevenness of one wavelength and half of it, faded out where a pixel is as wide as it. The tile's coarsest knots are 8 cells apart. */
function fine(tile: Tile, x: number, y: number, metres: number, footprint: number): number {
  const clear = Math.min(1, Math.max(0, metres / footprint - 0.6));
  if (clear <= 0) return 0;
  const cells = 8 / metres;
  return clear * sampleTile(tile, y * cells, x * cells);
}

function matCover(mat: Mat, x: number, y: number, across: number): number {
  const soft = Math.max(across, 1e-4);
  const inside = Math.min(x - mat.fromX, mat.toX - x, y - mat.fromY, mat.toY - y);
  return Math.min(1, Math.max(0, inside / soft + 0.5));
}
