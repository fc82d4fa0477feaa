import { pictureFromRgba } from "@overcue/client-capture/picture/picture-from-rgba";
import type { Picture } from "@overcue/client-capture/picture/picture";
import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import type { Point } from "@overcue/shared-geometry/point";
import { stickEnds } from "@overcue/shared-geometry/station-model";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { namedRandom, type Random } from "../../scenes/random.ts";

type Rgb = readonly [number, number, number];

export interface Lawn {
  readonly camera: Camera;
  readonly settings: StationSettings;
  readonly stickColour: Rgb;
  /** A stick off its place: along, across (metres), turned (radians). */
  readonly laid?: Partial<Record<StationLine, readonly [number, number, number]>>;
  /** Dark shoes: round patches in the picture. */
  readonly shoes?: readonly { readonly x: number; readonly y: number; readonly radius: number }[];
  readonly seed: number;
}

const grass: Rgb = [96, 124, 62];
const shoe: Rgb = [38, 38, 44];
const texture = 9;
const sensor = 2.5;

/** A lawn from above eye level with sticks on it, edges smooth over a pixel, grass and sensor noise on top. Nothing else is in the picture. */
export function lawnPicture(lawn: Lawn): { readonly picture: Picture; readonly ends: ReadonlyMap<StationLine, Ends> } {
  const { width, height } = lawn.camera;
  const random = namedRandom(lawn.seed, "lawn");
  const rgb = new Float32Array(width * height * 3);
  for (let pixel = 0; pixel < width * height; pixel++) {
    const blade = texture * noise(random);
    for (let c = 0; c < 3; c++) rgb[3 * pixel + c] = (grass[c] ?? 0) + blade;
  }
  const ends = new Map<StationLine, Ends>();
  for (const line of lawn.settings.sticksPresent) {
    const { near, far } = stickEnds(line, lawn.settings, lawn.laid?.[line] ?? [0, 0, 0]);
    const [from, to] = [project(lawn.camera, near), project(lawn.camera, far)];
    if (!from || !to) throw new Error("a stick behind the lens");
    ends.set(line, { near: from, far: to });
    const halfAt = (end: { x: number; y: number; z: number }): number =>
      (0.004 * lawn.camera.focal) / Math.hypot(end.x - lawn.camera.position.x, end.z - lawn.camera.position.z);
    paintBar(rgb, width, height, from, to, [halfAt(near), halfAt(far)], lawn.stickColour);
  }
  for (const patch of lawn.shoes ?? []) paintDisc(rgb, width, height, patch);
  const rgba = new Uint8Array(width * height * 4);
  for (let pixel = 0; pixel < width * height; pixel++) {
    for (let c = 0; c < 3; c++) {
      rgba[4 * pixel + c] = Math.min(255, Math.max(0, Math.round((rgb[3 * pixel + c] ?? 0) + sensor * noise(random))));
    }
    rgba[4 * pixel + 3] = 255;
  }
  return { picture: pictureFromRgba(rgba, width, height), ends };
}

export interface Ends {
  readonly near: Point<"image">;
  readonly far: Point<"image">;
}

function paintBar(
  rgb: Float32Array,
  width: number,
  height: number,
  from: Point<"image">,
  to: Point<"image">,
  [halfFrom, halfTo]: readonly [number, number],
  colour: Rgb,
): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  for (let y = Math.floor(Math.min(from.y, to.y)) - 4; y < Math.max(from.y, to.y) + 4; y++) {
    for (let x = Math.floor(Math.min(from.x, to.x)) - 4; x < Math.max(from.x, to.x) + 4; x++) {
      if (x < 0 || y < 0 || x >= width || y >= height) continue;
      const [dx, dy] = [x + 0.5 - from.x, y + 0.5 - from.y];
      const along = dx * ux + dy * uy;
      const half = halfFrom + Math.min(1, Math.max(0, along / length)) * (halfTo - halfFrom);
      const across = cover(half - Math.abs(dy * ux - dx * uy));
      blend(rgb, y * width + x, colour, across * cover(along) * cover(length - along));
    }
  }
}

function paintDisc(
  rgb: Float32Array,
  width: number,
  height: number,
  { x, y, radius }: { readonly x: number; readonly y: number; readonly radius: number },
): void {
  for (let row = Math.max(0, Math.floor(y - radius - 1)); row < Math.min(height, y + radius + 1); row++) {
    for (let column = Math.max(0, Math.floor(x - radius - 1)); column < Math.min(width, x + radius + 1); column++) {
      blend(rgb, row * width + column, shoe, cover(radius - Math.hypot(column + 0.5 - x, row + 0.5 - y)));
    }
  }
}

/** Share of a pixel that lies inside an edge at this distance. */
const cover = (inside: number): number => Math.min(1, Math.max(0, inside + 0.5));

function blend(rgb: Float32Array, pixel: number, colour: Rgb, share: number): void {
  for (let c = 0; c < 3; c++) rgb[3 * pixel + c] = (rgb[3 * pixel + c] ?? 0) * (1 - share) + (colour[c] ?? 0) * share;
}

/** A number with mean 0 and sd 1, triangular: a million of them must be cheap. */
const noise = (random: Random): number => Math.sqrt(6) * (random() + random() - 1);
