import type { Picture } from "../picture/picture.ts";
import type { RodColour } from "./learn-rod-colour.ts";
import { rodLikeness } from "./rod-likeness.ts";

/** A picture made smaller by a whole factor: means of `factor` by `factor` blocks, in quarters of a grey level. */
export interface WorkPicture {
  width: number;
  height: number;
  factor: number;
  /** width * height values, row-major, 0 to 1020, more where it is like the rod. */
  values: Int16Array;
}

export const emptyWorkPicture = (): WorkPicture => ({ width: 0, height: 0, factor: 1, values: new Int16Array(0) });

/**
 * Fills `into` from the picture's brightness, to which likeness to the rod is added `rodGain` times where its colour is known.
 * Its array is kept where the size is the same as last time.
 */
export function shrinkPicture(
  picture: Picture,
  factor: number,
  into: WorkPicture,
  rod: RodColour | null,
  rodGain: number,
): void {
  shrinkBrightness(picture, factor, into);
  if (rod !== null) addLikeness(picture, factor, into, rod, rodGain);
}

/** Colour comes at half size: each working pixel takes the colour pixels that begin inside it, at least the one that it lies in. */
function addLikeness(picture: Picture, factor: number, into: WorkPicture, rod: RodColour, rodGain: number): void {
  const stride = Math.ceil(picture.width / 2);
  const across = Math.max(1, Math.floor(factor / 2));
  const scale = (4 * rodGain) / (across * across);
  for (let y = 0; y < into.height; y++) {
    for (let x = 0; x < into.width; x++) {
      let sum = 0;
      const from = ((y * factor) >> 1) * stride + ((x * factor) >> 1);
      for (let row = 0; row < across; row++) {
        for (let column = 0; column < across; column++) sum += rodLikeness(picture, rod, from + row * stride + column);
      }
      const at = y * into.width + x;
      into.values[at] = (into.values[at] as number) + sum * scale;
    }
  }
}

function shrinkBrightness(picture: Picture, factor: number, into: WorkPicture): void {
  const width = Math.floor(picture.width / factor);
  const height = Math.floor(picture.height / factor);
  if (into.values.length !== width * height) into.values = new Int16Array(width * height);
  into.width = width;
  into.height = height;
  into.factor = factor;
  const { luma, width: stride } = picture;
  const out = into.values;
  if (factor === 1) {
    for (let i = 0; i < out.length; i++) out[i] = (luma[i] as number) << 2;
    return;
  }
  const rows = columnSums(width);
  const scale = 4 / (factor * factor);
  for (let y = 0; y < height; y++) {
    rows.fill(0);
    for (let row = 0; row < factor; row++) {
      addRow(luma, (y * factor + row) * stride, factor, rows);
    }
    const from = y * width;
    for (let x = 0; x < width; x++) out[from + x] = (rows[x] as number) * scale;
  }
}

let sums = new Int32Array(0);

function columnSums(width: number): Int32Array {
  if (sums.length !== width) sums = new Int32Array(width);
  return sums;
}

/** Adds a row of the picture to the sums, `factor` pixels to each. The small factors are written out: this touches every pixel of a picture. */
function addRow(luma: Uint8Array, from: number, factor: number, into: Int32Array): void {
  const width = into.length;
  let at = from;
  if (factor === 2) {
    for (let x = 0; x < width; x++, at += 2) {
      into[x] = (into[x] as number) + (luma[at] as number) + (luma[at + 1] as number);
    }
  } else if (factor === 3) {
    for (let x = 0; x < width; x++, at += 3) {
      into[x] = (into[x] as number) + (luma[at] as number) + (luma[at + 1] as number) + (luma[at + 2] as number);
    }
  } else if (factor === 4) {
    for (let x = 0; x < width; x++, at += 4) {
      into[x] =
        (into[x] as number) +
        (luma[at] as number) +
        (luma[at + 1] as number) +
        (luma[at + 2] as number) +
        (luma[at + 3] as number);
    }
  } else {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let column = 0; column < factor; column++, at++) sum += luma[at] as number;
      into[x] = (into[x] as number) + sum;
    }
  }
}
