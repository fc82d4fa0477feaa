import type { Rectangle } from "../canvas.ts";
import type { Tile } from "../noise-tile.ts";
import { quantiseBlocks, quantiserSteps } from "./block-quantise.ts";
import type { SensorSettings } from "./sensor-settings.ts";
import { makeToneCurve, toneOf, type ToneCurve } from "./tone-curve.ts";

/** A picture in the making: brightness at full size and colour at half size, 0-255 as floats. */
export interface Planes {
  readonly width: number;
  readonly height: number;
  readonly luma: Float32Array;
  readonly blue: Float32Array;
  readonly red: Float32Array;
}

export function makePlanes(width: number, height: number): Planes {
  const half = Math.ceil(width / 2) * Math.ceil(height / 2);
  return {
    width,
    height,
    luma: new Float32Array(width * height),
    blue: new Float32Array(half),
    red: new Float32Array(half),
  };
}

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
  const { width, height } = planes;
  blurLight(light, sensor.work, coded, width, within, settings.blur);
  for (let row = within.top; row < within.bottom; row++) {
    const gain = settings.gain * (lampAt[row] ?? 1);
    for (let at = (row * width + within.left) * 3; at < (row * width + within.right) * 3; at++) {
      coded[at] = toneOf(curve, gain * (coded[at] ?? 0) * (1 - settings.veil) + settings.veil);
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

function blurLight(
  light: Float32Array,
  work: Float32Array,
  out: Float32Array,
  width: number,
  within: Rectangle,
  deviation: number,
): void {
  const left = within.left * 3;
  const right = within.right * 3;
  const stride = width * 3;
  const near = Math.exp(-0.5 / Math.max(1e-3, deviation) ** 2);
  const far = near ** 4;
  const total = 1 + 2 * near + 2 * far;
  const [k0, k1, k2] = [1 / total, near / total, far / total];
  for (let row = within.top; row < within.bottom; row++) {
    const start = row * stride;
    for (let at = left; at < right; at++) {
      const m1 = at - 3 < left ? at : at - 3;
      const m2 = at - 6 < left ? m1 : at - 6;
      const p1 = at + 3 >= right ? at : at + 3;
      const p2 = at + 6 >= right ? p1 : at + 6;
      work[start + at] =
        k0 * (light[start + at] ?? 0) +
        k1 * ((light[start + m1] ?? 0) + (light[start + p1] ?? 0)) +
        k2 * ((light[start + m2] ?? 0) + (light[start + p2] ?? 0));
    }
  }
  for (let row = within.top; row < within.bottom; row++) {
    const start = row * stride;
    const m1 = Math.max(within.top, row - 1) * stride;
    const m2 = Math.max(within.top, row - 2) * stride;
    const p1 = Math.min(within.bottom - 1, row + 1) * stride;
    const p2 = Math.min(within.bottom - 1, row + 2) * stride;
    for (let at = left; at < right; at++) {
      out[start + at] =
        k0 * (work[start + at] ?? 0) +
        k1 * ((work[m1 + at] ?? 0) + (work[p1 + at] ?? 0)) +
        k2 * ((work[m2 + at] ?? 0) + (work[p2 + at] ?? 0));
    }
  }
}

/** ITU-R BT.601, full range, as the product reads its pictures; colour is the mean of each two by two. */
function splitColour(coded: Float32Array, planes: Planes, within: Rectangle): void {
  const { width, luma, blue, red } = planes;
  const halfWidth = Math.ceil(width / 2);
  for (let row = within.top; row < within.bottom; row++) {
    for (let column = within.left; column < within.right; column++) {
      const at = row * width + column;
      luma[at] = 0.299 * (coded[at * 3] ?? 0) + 0.587 * (coded[at * 3 + 1] ?? 0) + 0.114 * (coded[at * 3 + 2] ?? 0);
    }
  }
  for (let row = within.top; row < within.bottom; row += 2) {
    for (let column = within.left; column < within.right; column += 2) {
      let r = 0;
      let b = 0;
      let y = 0;
      let count = 0;
      for (let down = row; down < Math.min(row + 2, within.bottom); down++) {
        for (let across = column; across < Math.min(column + 2, within.right); across++) {
          const at = down * width + across;
          r += coded[at * 3] ?? 0;
          b += coded[at * 3 + 2] ?? 0;
          y += luma[at] ?? 0;
          count++;
        }
      }
      const half = (row >> 1) * halfWidth + (column >> 1);
      blue[half] = 128 + (0.564 * (b - y)) / count;
      red[half] = 128 + (0.713 * (r - y)) / count;
    }
  }
}

/** Adds back the difference from a 5x5 neighbourhood (two passes of a running mean of three). */
function sharpen(
  luma: Float32Array,
  work: Float32Array,
  width: number,
  height: number,
  within: Rectangle,
  strength: number,
): void {
  const inner = {
    left: Math.max(2, within.left),
    right: Math.min(width - 2, within.right),
    top: Math.max(2, within.top),
    bottom: Math.min(height - 2, within.bottom),
  };
  const plane = width * height;
  for (let row = Math.max(0, inner.top - 2); row < Math.min(height, inner.bottom + 2); row++) {
    for (let column = inner.left; column < inner.right; column++) {
      const at = row * width + column;
      work[at] =
        ((luma[at - 2] ?? 0) +
          (luma[at + 2] ?? 0) +
          2 * ((luma[at - 1] ?? 0) + (luma[at + 1] ?? 0)) +
          3 * (luma[at] ?? 0)) /
        9;
    }
  }
  for (let row = inner.top; row < inner.bottom; row++) {
    for (let column = inner.left; column < inner.right; column++) {
      const at = row * width + column;
      const around =
        ((work[at - 2 * width] ?? 0) +
          (work[at + 2 * width] ?? 0) +
          2 * ((work[at - width] ?? 0) + (work[at + width] ?? 0)) +
          3 * (work[at] ?? 0)) /
        9;
      work[plane + at] = (luma[at] ?? 0) + strength * ((luma[at] ?? 0) - around);
    }
  }
  for (let row = inner.top; row < inner.bottom; row++) {
    const start = row * width;
    luma.set(work.subarray(plane + start + inner.left, plane + start + inner.right), start + inner.left);
  }
}
