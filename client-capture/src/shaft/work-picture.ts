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
  const columns = columnSums(stride);
  const scale = 4 / (factor * factor);
  for (let y = 0; y < height; y++) {
    sumRows(luma, y * factor * stride, stride, factor, columns);
    sumColumns(columns, factor, scale, out, y * width, width);
  }
}

let sums = new Uint16Array(0);

function columnSums(width: number): Uint16Array {
  if (sums.length !== width) sums = new Uint16Array(width);
  return sums;
}

/** Sums `count` rows column by column, four pixels at a time where the picture lies so in memory that they can be read as one number: this touches every pixel of a picture. */
function sumRows(luma: Uint8Array, from: number, stride: number, count: number, into: Uint16Array): void {
  if (stride % 4 !== 0 || luma.byteOffset % 4 !== 0) {
    for (let x = 0; x < stride; x++) {
      let sum = 0;
      for (let row = 0, at = from + x; row < count; row++, at += stride) sum += luma[at] as number;
      into[x] = sum;
    }
    return;
  }
  const words = wordsOf(luma);
  const across = stride >> 2;
  for (let x = 0, first = from >> 2; x < across; x++, first++) {
    let even = 0;
    let odd = 0;
    for (let row = 0, at = first; row < count; row++, at += across) {
      const word = words[at] as number;
      even += word & 0xff00ff;
      odd += (word >>> 8) & 0xff00ff;
    }
    const to = x << 2;
    into[to] = even;
    into[to + 1] = odd;
    into[to + 2] = even >>> 16;
    into[to + 3] = odd >>> 16;
  }
}

let read: { bytes: Uint8Array; words: Uint32Array } = { bytes: new Uint8Array(0), words: new Uint32Array(0) };

/** The same memory as whole numbers of four bytes, the first byte lowest (as on every machine that browsers run on). */
function wordsOf(bytes: Uint8Array): Uint32Array {
  if (read.bytes !== bytes) {
    read = { bytes, words: new Uint32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength >> 2) };
  }
  return read.words;
}

/** Sums of `factor` neighbouring columns each, times `scale`. The small factors are written out. */
function sumColumns(
  columns: Uint16Array,
  factor: number,
  scale: number,
  into: Int16Array,
  to: number,
  count: number,
): void {
  const last = to + count;
  if (factor === 2) {
    for (let i = to, at = 0; i < last; i++, at += 2) {
      into[i] = ((columns[at] as number) + (columns[at + 1] as number)) * scale;
    }
  } else if (factor === 3) {
    for (let i = to, at = 0; i < last; i++, at += 3) {
      into[i] = ((columns[at] as number) + (columns[at + 1] as number) + (columns[at + 2] as number)) * scale;
    }
  } else {
    for (let i = to, at = 0; i < last; i++) {
      let sum = 0;
      for (let column = 0; column < factor; column++, at++) sum += columns[at] as number;
      into[i] = sum * scale;
    }
  }
}
