import type { Rectangle } from "../canvas.ts";
import type { Tile } from "../noise-tile.ts";
import { quantiseBlocks, quantiserSteps } from "./block-quantise.ts";
import type { SensorSettings } from "./sensor-settings.ts";
import { blurLight } from "./blur-light.ts";
import type { Planes } from "./planes.ts";
import { sharpen } from "./sharpen.ts";
import { splitColour } from "./split-colour.ts";
import { makeToneCurve, toneOf, type ToneCurve } from "./tone-curve.ts";

/** What turns light into a picture, made once for a scene; holds its own working space. */
export interface Sensor {
  readonly settings: SensorSettings;
  readonly curve: ToneCurve;
  readonly grain: Tile;
  readonly lumaSteps: Float32Array;
  readonly chromaSteps: Float32Array;
  readonly work: Float32Array;
  readonly coded: Float32Array;
}

export function makeSensor(settings: SensorSettings, grain: Tile, width: number, height: number): Sensor {
  const quality = settings.quality === 0 ? 100 : settings.quality;
  return {
    settings,
    curve: makeToneCurve(),
    grain,
    lumaSteps: quantiserSteps("luma", quality),
    chromaSteps: quantiserSteps("chroma", quality),
    work: new Float32Array(width * height * 3),
    coded: new Float32Array(width * height * 3),
  };
}

/**
 * Light to picture inside the rectangle (even edges): lens blur, glare, lamps, tone, colour, sharpening. Noise and compression
 * follow in `finish`, so that a still background can be developed once and get fresh noise.
 * `lampAt` is the lamps' light at each row, 1 without flicker.
 */
export function develop(
  light: Float32Array,
  planes: Planes,
  sensor: Sensor,
  lampAt: Float32Array,
  within: Rectangle,
): void {
  const { settings, curve, coded } = sensor;
  const { veil } = settings;
  const clear = 1 - veil;
  const { width, height } = planes;
  blurLight(light, sensor.work, coded, width, within, settings.blur);
  for (let row = within.top; row < within.bottom; row++) {
    const gain = settings.gain * (lampAt[row] ?? 1);
    for (let at = (row * width + within.left) * 3; at < (row * width + within.right) * 3; at++) {
      coded[at] = toneOf(curve, gain * (coded[at] ?? 0) * clear + veil);
    }
  }
  splitColour(coded, planes, within);
  if (settings.sharpen > 0) sharpen(planes.luma, sensor.work, width, height, within, settings.sharpen);
}

/** Adds noise and takes the picture through compression, inside the rectangle (edges on multiples of 16 or the picture's). */
export function finish(planes: Planes, sensor: Sensor, shift: readonly [number, number], within: Rectangle): void {
  const { settings, grain } = sensor;
  const { width, luma, blue, red } = planes;
  const mask = grain.side - 1;
  for (let row = within.top; row < within.bottom; row++) {
    const from = ((row + shift[1]) & mask) * grain.side;
    for (let column = within.left; column < within.right; column++) {
      const at = row * width + column;
      const level = luma[at] ?? 0;
      luma[at] = level + grainAt(level) * settings.grain * (grain.values[from + ((column + shift[0]) & mask)] ?? 0);
    }
  }
  const halfWidth = Math.ceil(width / 2);
  const half = {
    left: within.left >> 1,
    top: within.top >> 1,
    right: Math.ceil(within.right / 2),
    bottom: Math.ceil(within.bottom / 2),
  };
  for (let row = half.top; row < half.bottom; row++) {
    for (let column = half.left; column < half.right; column++) {
      const at = row * halfWidth + column;
      const near = ((row + shift[0]) & mask) * grain.side;
      blue[at] = (blue[at] ?? 0) + 0.4 * settings.grain * (grain.values[near + ((column + shift[1] + 71) & mask)] ?? 0);
      red[at] = (red[at] ?? 0) + 0.4 * settings.grain * (grain.values[near + ((column + shift[1] + 203) & mask)] ?? 0);
    }
  }
  if (settings.quality === 0) return;
  quantiseBlocks(luma, width, within, sensor.lumaSteps);
  quantiseBlocks(blue, halfWidth, half, sensor.chromaSteps);
  quantiseBlocks(red, halfWidth, half, sensor.chromaSteps);
}

/** Noise at a grey level against noise at mid grey: most in the shadows' upper half, little in white, as a tone curve leaves it. */
const grainAt = (level: number): number => {
  const share = Math.min(1, Math.max(0, level / 255));
  return 0.45 + 1.5 * share * (1 - share) + 0.35 * (1 - share) * share;
};
