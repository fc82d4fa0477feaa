import type { Picture } from "../picture/picture.ts";
import { cellOf, type RodColour } from "./rod-likeness.ts";

/** A picture made smaller by a whole factor: means of `factor` by `factor` blocks, in quarters of a grey level. */
export interface WorkPicture {
  width: number;
  height: number;
  factor: number;
  /** width * height values, row-major, 0 to 1020, more where it is like the rod. */
  values: Int16Array;
  /** How much each of them is like the rod, 0 to 255; empty where its colour is not known. */
  likeness: Uint8Array;
}

export const emptyWorkPicture = (): WorkPicture => ({
  width: 0,
  height: 0,
  factor: 1,
  values: new Int16Array(0),
  likeness: new Uint8Array(0),
});

/**
 * Fills `into` from the picture's brightness, to which likeness to the rod is added `rodGain` times where its colour is known.
 * Its arrays are kept where the size is the same as last time.
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
  const { width, height, values } = into;
  if (into.likeness.length !== values.length) into.likeness = new Uint8Array(values.length);
  if (picture.chroma === null) {
    into.likeness.fill(0);
    return;
  }
  // Every pixel is touched: what the loop needs is fetched once.
  const { blue, red } = picture.chroma;
  const { likeness } = into;
  const table = rod.likeness;
  const stride = Math.ceil(picture.width / 2);
  const across = Math.max(1, Math.floor(factor / 2));
  const pixels = across * across;
  const gain = 4 * rodGain;
  for (let y = 0, at = 0; y < height; y++) {
    const row = ((y * factor) >> 1) * stride;
    for (let x = 0; x < width; x++, at++) {
      const from = row + ((x * factor) >> 1);
      let sum = table[cellOf(blue[from] as number, red[from] as number)] as number;
      for (let more = 1; more < pixels; more++) {
        const i = from + Math.floor(more / across) * stride + (more % across);
        sum += table[cellOf(blue[i] as number, red[i] as number)] as number;
      }
      const mean = pixels === 1 ? sum : sum / pixels;
      likeness[at] = mean;
      values[at] = (values[at] as number) + mean * gain;
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
  const scale = 4 / (factor * factor);
  const sumBlocks = stride % 12 === 0 && luma.byteOffset % 4 === 0 ? byFours[factor] : undefined;
  if (sumBlocks !== undefined) {
    const words = wordsOf(luma);
    for (let y = 0; y < height; y++)
      sumBlocks(words, (y * factor * stride) >> 2, stride >> 2, scale, out, y * width, width);
    return;
  }
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let row = 0; row < factor; row++) {
        const from = (y * factor + row) * stride + x * factor;
        for (let column = 0; column < factor; column++) sum += luma[from + column] as number;
      }
      out[y * width + x] = sum * scale;
    }
  }
}

/**
 * A row of blocks, summed and scaled into `into` from `to` on, `count` of them. `words` hold four pixels of a row each, the leftmost in the lowest byte; rows are `across` words apart and the first begins at `from`.
 */
type SumBlocks = (
  words: Int32Array,
  from: number,
  across: number,
  scale: number,
  into: Int16Array,
  to: number,
  count: number,
) => void;

/** The usual sizes written out, four pixels at a time: shrinking touches every pixel of a picture. In each number two sums lie side by side, of 16 bits each. */
const byFours: Readonly<Partial<Record<number, SumBlocks>>> = {
  2(words, from, across, scale, into, to, count) {
    for (let i = to, a = from, b = from + across; i < to + count; i += 2, a++, b++) {
      const p = words[a] as number;
      const q = words[b] as number;
      const sums = evens(p) + odds(p) + evens(q) + odds(q);
      into[i] = (sums & 0xffff) * scale;
      into[i + 1] = (sums >>> 16) * scale;
    }
  },
  3(words, from, across, scale, into, to, count) {
    let a = from;
    let b = from + across;
    let c = b + across;
    for (let i = to; i < to + count; i += 4, a += 3, b += 3, c += 3) {
      let p = words[a] as number;
      let q = words[b] as number;
      let r = words[c] as number;
      const even0 = evens(p) + evens(q) + evens(r);
      const odd0 = odds(p) + odds(q) + odds(r);
      p = words[a + 1] as number;
      q = words[b + 1] as number;
      r = words[c + 1] as number;
      const even1 = evens(p) + evens(q) + evens(r);
      const odd1 = odds(p) + odds(q) + odds(r);
      p = words[a + 2] as number;
      q = words[b + 2] as number;
      r = words[c + 2] as number;
      const even2 = evens(p) + evens(q) + evens(r);
      const odd2 = odds(p) + odds(q) + odds(r);
      into[i] = ((even0 & 0xffff) + (odd0 & 0xffff) + (even0 >>> 16)) * scale;
      into[i + 1] = ((odd0 >>> 16) + (even1 & 0xffff) + (odd1 & 0xffff)) * scale;
      into[i + 2] = ((even1 >>> 16) + (odd1 >>> 16) + (even2 & 0xffff)) * scale;
      into[i + 3] = ((odd2 & 0xffff) + (even2 >>> 16) + (odd2 >>> 16)) * scale;
    }
  },
  4(words, from, across, scale, into, to, count) {
    for (let i = to, a = from, b = from + across; i < to + count; i++, a++, b++) {
      const p = words[a] as number;
      const q = words[b] as number;
      const r = words[a + 2 * across] as number;
      const s = words[b + 2 * across] as number;
      const sums = evens(p) + odds(p) + evens(q) + odds(q) + evens(r) + odds(r) + evens(s) + odds(s);
      into[i] = ((sums & 0xffff) + (sums >>> 16)) * scale;
    }
  },
};

const evens = (four: number): number => four & 0xff00ff;
const odds = (four: number): number => (four >>> 8) & 0xff00ff;

const wordsRead = new WeakMap<Uint8Array, Int32Array>();

/** The same memory as whole numbers of four bytes, the first byte lowest (as on every machine that browsers run on). */
function wordsOf(bytes: Uint8Array): Int32Array {
  const known = wordsRead.get(bytes);
  if (known !== undefined) return known;
  const words = new Int32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength >> 2);
  wordsRead.set(bytes, words);
  return words;
}
