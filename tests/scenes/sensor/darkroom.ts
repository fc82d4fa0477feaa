import type { Picture } from "@overcue/client-capture/picture/picture";
import { wholeOf, type Rectangle } from "../canvas.ts";
import type { Tile } from "../noise-tile.ts";
import type { Random } from "../random.ts";
import type { SceneSettings } from "../scene-settings.ts";
import { develop, finish, makeSensor, type Sensor } from "./develop.ts";
import { makePlanes, type Planes } from "./planes.ts";
import { lampAt } from "./lamp-at.ts";

/** Turns the light gathered inside a rectangle into the whole picture of that moment. */
export interface Darkroom {
  develop(light: Float32Array, within: Rectangle, t: number, index: number): Picture;
}

/** The still part of the picture, noise and all, is made this many times at most and then used in turn. */
const mostStills = 12;
const leastStills = 5;

/**
 * With a still background (`still`, linear light) that part is developed a few times beforehand, so that each picture costs
 * only its moving part. With null the caller always hands in the whole picture.
 */
export function makeDarkroom(
  settings: SceneSettings,
  grain: Tile,
  still: Float32Array | null,
  random: Random,
): Darkroom {
  const { width, height } = settings.camera;
  const sensor = makeSensor(settings.sensor, grain, width, height);
  const planes = makePlanes(width, height);
  const lamps = new Float32Array(height).fill(1);
  const whole = wholeOf({ width, height });
  const stills = still === null ? null : developStills(settings, sensor, still, random);
  const clean = makePlanes(width, height);
  if (still !== null) develop(still, clean, sensor, lamps, whole);
  copyPlanes(clean, planes, whole);
  return {
    develop(light, within, t, index) {
      lampAt(settings, t, lamps);
      develop(light, planes, sensor, lamps, within);
      finish(planes, sensor, randomShift(grain, random), within);
      const from = stills?.[index % stills.length];
      const picture = from ? copyPicture(from) : emptyPicture(width, height);
      writePicture(planes, picture, within);
      copyPlanes(clean, planes, within);
      return picture;
    },
  };
}

function developStills(
  settings: SceneSettings,
  sensor: Sensor,
  still: Float32Array,
  random: Random,
): readonly Picture[] | null {
  const { width, height } = settings.camera;
  const count = stillCount(settings);
  if (count === null) throw new RangeError("makeDarkroom: the lamps never fall into step with the pictures");
  const lamps = new Float32Array(height).fill(1);
  const planes = makePlanes(width, height);
  const whole = wholeOf({ width, height });
  return Array.from({ length: count }, (_, index) => {
    lampAt(settings, settings.fromMs + (index * 1000) / settings.framesPerSecond, lamps);
    develop(still, planes, sensor, lamps, whole);
    finish(planes, sensor, randomShift(sensor.grain, random), whole);
    const picture = emptyPicture(width, height);
    writePicture(planes, picture, whole);
    return picture;
  });
}

/** After how many pictures the lamps' phase comes round again; null where it takes more than twelve. */
function stillCount(settings: SceneSettings): number | null {
  const { mains, flicker } = settings.sensor;
  if (mains === 0 || flicker === 0) return leastStills;
  for (let count = leastStills; count <= mostStills; count++) {
    const turns = (count * 2 * mains) / settings.framesPerSecond;
    if (Math.abs(turns - Math.round(turns)) < 1e-6) return count;
  }
  return null;
}

const randomShift = (grain: Tile, random: Random): [number, number] => [
  Math.floor(random() * grain.side),
  Math.floor(random() * grain.side),
];

function emptyPicture(width: number, height: number): Picture {
  const half = Math.ceil(width / 2) * Math.ceil(height / 2);
  const chroma = { blue: new Uint8Array(half), red: new Uint8Array(half) };
  return { width, height, luma: new Uint8Array(width * height), chroma };
}

const copyPicture = (from: Picture): Picture => ({
  ...from,
  luma: from.luma.slice(),
  chroma: from.chroma && { blue: from.chroma.blue.slice(), red: from.chroma.red.slice() },
});

function writePicture(planes: Planes, picture: Picture, within: Rectangle): void {
  writePlane(planes.luma, picture.luma, planes.width, within);
  if (!picture.chroma) return;
  const halfWidth = Math.ceil(planes.width / 2);
  writePlane(planes.blue, picture.chroma.blue, halfWidth, halved(within));
  writePlane(planes.red, picture.chroma.red, halfWidth, halved(within));
}

function writePlane(from: Float32Array, to: Uint8Array, width: number, within: Rectangle): void {
  for (let row = within.top; row < within.bottom; row++) {
    for (let at = row * width + within.left; at < row * width + within.right; at++) {
      const value = (from[at] ?? 0) + 0.5;
      to[at] = value < 0 ? 0 : value > 255 ? 255 : value;
    }
  }
}

function copyPlanes(from: Planes, to: Planes, within: Rectangle): void {
  copyRows(from.luma, to.luma, from.width, within);
  copyRows(from.blue, to.blue, Math.ceil(from.width / 2), halved(within));
  copyRows(from.red, to.red, Math.ceil(from.width / 2), halved(within));
}

function copyRows(from: Float32Array, to: Float32Array, width: number, within: Rectangle): void {
  for (let row = within.top; row < within.bottom; row++) {
    to.set(from.subarray(row * width + within.left, row * width + within.right), row * width + within.left);
  }
}

const halved = (within: Rectangle): Rectangle => ({
  left: within.left >> 1,
  top: within.top >> 1,
  right: Math.ceil(within.right / 2),
  bottom: Math.ceil(within.bottom / 2),
});
