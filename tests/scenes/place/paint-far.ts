import type { Canvas } from "../canvas.ts";
import { mixColour, type Colour } from "../colour.ts";
import { sampleTile, type Tile } from "../noise-tile.ts";
import { see, type View } from "../view.ts";

/** Sky above, a line of trees or hills before it, standing where the ground ends. */
export interface Far {
  readonly skyTop: Colour;
  readonly skyLow: Colour;
  readonly clouds: number;
  readonly trees: Colour;
  readonly treesLit: Colour;
  /** Mean height of the tree line as a share of the picture's height, and how rough its top is. */
  readonly treeHeight: number;
  readonly roughness: number;
}

/** Paints the whole canvas: what lies beyond the ground. The ground is painted over it. */
export function paintFar(canvas: Canvas, view: View, far: Far, farEnd: number, tile: Tile): void {
  const horizon = see(view, { x: farEnd, y: view.camera.position.y, z: 0 }).y;
  const unit = canvas.height / 1280;
  for (let column = 0; column < canvas.width; column++) {
    const run = column / unit;
    const top =
      horizon -
      canvas.height *
        far.treeHeight *
        (1 +
          far.roughness *
            (0.6 * sampleTile(tile, run * 0.06, 3) +
              0.3 * sampleTile(tile, run * 0.4, 40) +
              0.15 * sampleTile(tile, run * 2.1, 90)));
    for (let row = 0; row < canvas.height; row++) {
      const pixel = (row * canvas.width + column) * 3;
      const rise = Math.min(1, Math.max(0, (horizon - row) / Math.max(1, horizon)));
      const cloud = far.clouds * sampleTile(tile, run * 0.05 + 7, (row / unit) * 0.12);
      let [r, g, b] = mixColour(far.skyLow, far.skyTop, Math.min(1, Math.max(0, rise - 0.3 * cloud)));
      const ragged = row - top + 5 * unit * sampleTile(tile, run * 1.7, (row / unit) * 1.7);
      const inTrees = Math.min(1, Math.max(0, ragged / (3 * unit) + 0.5));
      if (inTrees > 0) {
        const leaf =
          0.45 +
          0.3 * sampleTile(tile, run * 0.5, (row / unit) * 0.8) +
          0.22 * sampleTile(tile, run * 2, (row / unit) * 2.4);
        const [tr, tg, tb] = mixColour(far.trees, far.treesLit, Math.min(1, Math.max(0, leaf)));
        r += (tr - r) * inTrees;
        g += (tg - g) * inTrees;
        b += (tb - b) * inTrees;
      }
      canvas.rgb[pixel] = r;
      canvas.rgb[pixel + 1] = g;
      canvas.rgb[pixel + 2] = b;
    }
  }
}
