import type { ShaftTuning } from "./shaft-tuning.ts";
import { blockAfter, blockLength, flank, type Strip } from "./strip.ts";

/**
 * Turns the sums into evidence per block and line, in `strip.runs`: contrast of the line's middle against both sides, over the block's own
 * texture. What was there before counts by `still`, 0 to 1; what is new counts the more.
 */
export function judgeStrip(strip: Strip, still: number, tuning: ShaftTuning): void {
  const { blocks, backwardBlocks, nearest, width, runs, ridges, stirs } = strip;
  const share = strip.pixelsPerBlock / strip.torso;
  const floor = tuning.contrastFloor * 32 * blockLength;
  const freshWeight = tuning.motionWeight * still + (1 + tuning.motionWeight) * (1 - still);
  const slope = share * tuning.contrastSlope;
  const zero = slope * tuning.contrastZero;
  const least = share * tuning.gapEvidence;
  const most = share * tuning.fullEvidence;
  for (let block = nearest; block < blocks + backwardBlocks; block = blockAfter(strip, block)) {
    const row = block * width;
    findRidges(strip, row);
    const stay = (slope * still) / (floor + texture.now);
    const moved = (slope * freshWeight) / (floor + texture.change);
    const last = row + width - flank;
    for (let i = row + flank; i < last; i++) {
      // Signs are taken off and put on by masks: in noise no branch could be foretold.
      const now = ridges[i] as number;
      const minus = now >> 31;
      const size = (now ^ minus) - minus;
      const fresh = ((stirs[i] as number) ^ minus) - minus;
      const beyond = (fresh & ~(fresh >> 31)) - 2 * size;
      const counted = 2 * size + (beyond & (beyond >> 31));
      runs[i] = Math.max(least, Math.min(most, size * stay + counted * moved - zero));
    }
  }
}

/** Mean size of the ridges of the row that `findRidges` saw last, in brightness and in change. */
const texture = { now: 0, change: 0 };

/**
 * Contrast of each cell of a row against both neighbours across, in eighths of the cells' unit: 0 where the two sides disagree (an edge, not a
 * line). Brightness goes to `ridges`, change to `stirs`, their mean sizes to `texture`.
 */
function findRidges({ sums, ridges, stirs, width }: Strip, row: number): void {
  const first = row + flank;
  const last = row + width - flank;
  let total = 0;
  let stirred = 0;
  // Sums of two neighbours, from three cells before to two cells behind the one that is judged, brightness and change in one number.
  let p0 = (sums[first - 3] as number) + (sums[first - 2] as number);
  let p1 = (sums[first - 2] as number) + (sums[first - 1] as number);
  let p2 = (sums[first - 1] as number) + (sums[first] as number);
  let p3 = (sums[first] as number) + (sums[first + 1] as number);
  let p4 = (sums[first + 1] as number) + (sums[first + 2] as number);
  let f = sums[first + 2] as number;
  for (let i = first; i < last; i++) {
    const g = sums[i + 3] as number;
    const p5 = f + g;
    const middle = p2 + p3;
    const value = ridgeOf(2 * (middle & 0xffff), p0 & 0xffff, p5 & 0xffff);
    ridges[i] = value;
    total += value < 0 ? -value : value;
    const stir = ridgeOf(2 * (middle >> 16), p0 >> 16, p5 >> 16);
    stirs[i] = stir;
    stirred += stir < 0 ? -stir : stir;
    p0 = p1;
    p1 = p2;
    p2 = p3;
    p3 = p4;
    p4 = p5;
    f = g;
  }
  texture.now = total / (width - 2 * flank);
  texture.change = stirred / (width - 2 * flank);
}

/** The smaller of the two contrasts where they have one sign, else 0; by masks, for the same reason. */
function ridgeOf(middle: number, before: number, after: number): number {
  const left = middle - 4 * before;
  const right = middle - 4 * after;
  const minus = left >> 31;
  const a = (left ^ minus) - minus;
  const b = (right ^ minus) - minus;
  const away = a - b;
  const smaller = b + (away & (away >> 31));
  return ((smaller ^ minus) - minus) & ~((left ^ right) >> 31);
}
