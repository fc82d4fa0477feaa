import type { LineWindow } from "./line-window.ts";
import type { BodyMarks } from "./mark-body.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import { blockAfter, blockLength, type Strip } from "./strip.ts";

/**
 * Turns the sums into evidence per block and line, in `strip.runs`: contrast of the line's middle against both sides, over the block's own
 * texture. What was there before counts by `still`, 0 to 1; what is new counts the more. What speaks for a line counts less where the body is
 * (there a line may well be a limb's edge), and nothing outside of the picture.
 */
export function judgeStrip(
  strip: Strip,
  window: LineWindow,
  { free }: BodyMarks,
  still: number,
  tuning: ShaftTuning,
): void {
  const { blocks, backwardBlocks, nearest, judged, firstLine, apart, runs, stays, moves, marksAt } = strip;
  const share = strip.pixelsPerBlock / strip.torso;
  const floor = tuning.contrastFloor * 32 * blockLength;
  const freshWeight = tuning.motionWeight * still + (1 + tuning.motionWeight) * (1 - still);
  const slope = share * tuning.contrastSlope;
  const zero = slope * tuning.contrastZero;
  const least = share * tuning.gapEvidence;
  const most = share * tuning.fullEvidence;
  strip.zero = zero;
  strip.least = least;
  strip.most = most;
  strip.marksApart = strip.alongX ? window.size : 1;
  const step = apart * strip.marksApart;
  for (let block = nearest; block < blocks + backwardBlocks; block = blockAfter(strip, block)) {
    findRidges(strip, block);
    const stay = (slope * still) / (floor + texture.now);
    const moved = (slope * freshWeight) / (floor + texture.change);
    stays[block] = stay;
    moves[block] = moved;
    marksAt[block] = markOf(strip, window, block);
    const row = block * judged;
    let mark = (marksAt[block] as number) + firstLine * strip.marksApart;
    for (let i = 0; i < judged; i++, mark += step) {
      const now = ridges[i] as number;
      const evidence = Math.abs(now) * stay + countedStir(now, stirs[i] as number) * moved - zero;
      runs[row + i] = trusted(evidence > most ? most : evidence < least ? least : evidence, free[mark] as number);
    }
  }
}

/** One line of the strip, judged by itself: `runs` as the strip's own, and the contrasts that they come from, by block. */
export interface StripLine {
  readonly runs: Float32Array;
  readonly ridges: Int32Array;
  readonly stirs: Int32Array;
}

export const makeStripLine = (blocks: number): StripLine => ({
  runs: new Float32Array(blocks),
  ridges: new Int32Array(blocks),
  stirs: new Int32Array(blocks),
});

/** Judges the line in `column` by the texture that `judgeStrip` found. */
export function judgeLine(strip: Strip, { free }: BodyMarks, column: number, into: StripLine): void {
  const { blocks, backwardBlocks, nearest, width, pairs, stays, moves, marksAt, marksApart, zero, least, most } = strip;
  for (let block = nearest; block < blocks + backwardBlocks; block = blockAfter(strip, block)) {
    const at = block * width + column;
    const before = pairs[at - 3] as number;
    const middle = (pairs[at - 1] as number) + (pairs[at] as number);
    const after = pairs[at + 2] as number;
    const now = ridgeOf(2 * (middle & 0xffff), before & 0xffff, after & 0xffff);
    const stir = ridgeOf(2 * (middle >> 16), before >> 16, after >> 16);
    const evidence =
      Math.abs(now) * (stays[block] as number) + countedStir(now, stir) * (moves[block] as number) - zero;
    into.ridges[block] = now;
    into.stirs[block] = stir;
    const trust = free[(marksAt[block] as number) + column * marksApart] as number;
    into.runs[block] = trusted(Math.max(least, Math.min(most, evidence)), trust);
  }
}

/** Contrasts of the row that `findRidges` saw last, in brightness and in change, and their mean sizes. */
let ridges = new Int32Array(0);
let stirs = new Int32Array(0);
const texture = { now: 0, change: 0 };

/**
 * Contrast of each judged cell of a row against both neighbours across, in eighths of the cells' unit: 0 where the two sides disagree (an edge, not a
 * line).
 */
function findRidges({ pairs, width, apart, judged, firstLine }: Strip, block: number): void {
  if (ridges.length < judged) {
    ridges = new Int32Array(2 * judged);
    stirs = new Int32Array(2 * judged);
  }
  let total = 0;
  let stirred = 0;
  for (let i = 0, at = block * width + firstLine; i < judged; i++, at += apart) {
    const before = pairs[at - 3] as number;
    const middle = (pairs[at - 1] as number) + (pairs[at] as number);
    const after = pairs[at + 2] as number;
    const now = ridgeOf(2 * (middle & 0xffff), before & 0xffff, after & 0xffff);
    const stir = ridgeOf(2 * (middle >> 16), before >> 16, after >> 16);
    ridges[i] = now;
    stirs[i] = stir;
    total += Math.abs(now);
    stirred += Math.abs(stir);
  }
  texture.now = total / judged;
  texture.change = stirred / judged;
}

/** The smaller of the two contrasts where they have one sign, else 0; by masks: in noise no branch could be foretold. */
function ridgeOf(middle: number, before: number, after: number): number {
  const left = middle - 4 * before;
  const right = middle - 4 * after;
  const away = left - right;
  const under = away & (away >> 31);
  const smaller = right + under;
  const larger = left - under;
  return (smaller & ~(smaller >> 31)) + (larger & (larger >> 31));
}

/** How much of a contrast counts as new: as far as it has the sign of the present one, up to twice that. */
function countedStir(now: number, stir: number): number {
  const minus = now >> 31;
  const size = (now ^ minus) - minus;
  const fresh = (stir ^ minus) - minus;
  const beyond = (fresh & ~(fresh >> 31)) - 2 * size;
  return 2 * size + (beyond & (beyond >> 31));
}

/** `trust`: 255 is whole. */
const trusted = (evidence: number, trust: number): number =>
  evidence > 0 && trust < 255 ? (evidence * trust) / 255 : evidence;

/** Where the middle of a block's first cell lies in the marks. */
function markOf({ blocks, width, slope, forward, alongX }: Strip, { half, size }: LineWindow, block: number): number {
  const major =
    block < blocks ? forward * (block + 0.5) * blockLength : -forward * (block - blocks + 0.5) * blockLength;
  const row = Math.round(major);
  const aside = half - (width - 1) / 2 + Math.round(slope * row);
  return alongX ? half + row + aside * size : (half + row) * size + aside;
}
