import type { Canvas } from "../canvas.ts";
import { timesColour, type Colour } from "../colour.ts";
import { lightOn, type Light } from "../light.ts";
import { sampleTile, type Tile } from "../noise-tile.ts";
import { rayThrough, type View } from "../view.ts";

/** A rectangle on the wall: a door, a frame, a shelf, a window (which shines by itself). Metres. */
export interface WallPatch {
  readonly fromY: number;
  readonly toY: number;
  readonly fromZ: number;
  readonly toZ: number;
  readonly colour: Colour;
  readonly shines: boolean;
}

/** The wall across the target line, `atX` metres beyond the ball. */
export interface Wall {
  readonly atX: number;
  readonly colour: Colour;
  readonly patches: readonly WallPatch[];
}

const lit = new Float64Array(3);

/** Paints the wall over the whole canvas; the floor is painted over it. */
export function paintWall(canvas: Canvas, view: View, wall: Wall, light: Light, tile: Tile): void {
  const { camera } = view;
  lightOn(light, 0, 0, -1, lit);
  const level: Colour = [lit[0] ?? 0, lit[1] ?? 0, lit[2] ?? 0];
  for (let row = 0; row < canvas.height; row++) {
    for (let column = 0; column < canvas.width; column++) {
      const along = rayThrough(view, column + 0.5, row + 0.5);
      const reach = (wall.atX - camera.position.x) / Math.max(1e-3, along.x);
      const y = camera.position.y + reach * along.y;
      const z = camera.position.z + reach * along.z;
      const pixelSize = reach / camera.focal;
      const uneven = 1 + 0.04 * sampleTile(tile, y * 20, z * 20) + 0.05 * sampleTile(tile, y * 120, z * 120);
      let [r, g, b] = timesColour(wall.colour, level);
      for (const patch of wall.patches) {
        const inside = Math.min(y - patch.fromY, patch.toY - y, z - patch.fromZ, patch.toZ - z);
        const cover = Math.min(1, Math.max(0, inside / pixelSize + 0.5));
        if (cover <= 0) continue;
        const [pr, pg, pb] = patch.shines ? patch.colour : timesColour(patch.colour, level);
        r += (pr - r) * cover;
        g += (pg - g) * cover;
        b += (pb - b) * cover;
      }
      const pixel = (row * canvas.width + column) * 3;
      canvas.rgb[pixel] = r * uneven;
      canvas.rgb[pixel + 1] = g * uneven;
      canvas.rgb[pixel + 2] = b * uneven;
    }
  }
}
