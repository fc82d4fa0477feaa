import {
  CanvasTexture,
  Color,
  Group,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  RepeatWrapping,
  SRGBColorSpace,
} from "three";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { demoSticks, stickRadius } from "../../demo-motion/demo-sticks.ts";
import { demoColours } from "./demo-colours.ts";
import { drawPart } from "./draw-part.ts";
import { layBetween } from "./lay-between.ts";
import { rodGeometry } from "./limb-geometry.ts";

const tile = 256;
const tileMetres = 2.4;
const halfLawn = 300;

/** The ground with the station's sticks. `random` in [0, 1) grows the grass. */
export function lawn(station: StationSettings, random: () => number): Group {
  const group = new Group();
  const texture = new CanvasTexture(grass(random));
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.repeat.setScalar((2 * halfLawn) / tileMetres);
  texture.colorSpace = SRGBColorSpace;
  texture.anisotropy = 8;
  group.add(new Mesh(new PlaneGeometry(2 * halfLawn, 2 * halfLawn), new MeshBasicMaterial({ map: texture })));
  for (const { near, far } of demoSticks(station)) {
    const stick = drawPart(rodGeometry(station.stickLength, stickRadius, stickRadius), demoColours.stick);
    layBetween(stick, near, far);
    group.add(stick);
  }
  return group;
}

function grass(random: () => number): OffscreenCanvas {
  const canvas = new OffscreenCanvas(tile, tile);
  const context = canvas.getContext("2d");
  if (!context) throw new Error("The demo golfer could not be drawn: this browser gives no 2D canvas.");
  const base = new Color(demoColours.lawn);
  const { r, g, b } = base.getRGB({ r: 0, g: 0, b: 0 }, SRGBColorSpace);
  const pixels = context.createImageData(tile, tile);
  const patches = smoothNoise(random);
  for (let k = 0; k < tile * tile; k++) {
    const shade = 0.9 + 0.2 * (random() - 0.5) + 0.22 * (patches(k % tile, Math.floor(k / tile)) - 0.5);
    pixels.data.set([255 * r * shade, 255 * g * shade, 255 * b * shade, 255], 4 * k);
  }
  context.putImageData(pixels, 0, 0);
  return canvas;
}

/** Soft patches in [0, 1] that repeat with the tile. */
function smoothNoise(random: () => number): (x: number, y: number) => number {
  const cells = 8;
  const values = Array.from({ length: cells * cells }, random);
  const at = (x: number, y: number): number => values[(y % cells) * cells + (x % cells)] ?? 0;
  const ease = (t: number): number => t * t * (3 - 2 * t);
  return (x, y) => {
    const u = (x / tile) * cells;
    const v = (y / tile) * cells;
    const i = Math.floor(u);
    const j = Math.floor(v);
    const s = ease(u - i);
    const t = ease(v - j);
    return (at(i, j) * (1 - s) + at(i + 1, j) * s) * (1 - t) + (at(i, j + 1) * (1 - s) + at(i + 1, j + 1) * s) * t;
  };
}
