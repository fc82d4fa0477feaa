import type { ShaftTuning } from "./shaft-tuning.ts";
import { blockLength, flank, type Strip } from "./strip.ts";

/**
 * Turns the sums into evidence per block and line, in `strip.runs`: contrast of the line's middle against both sides, over the block's own
 * texture. What was there before counts by `still`, 0 to 1; what is new counts the more.
 */
export function judgeStrip(strip: Strip, still: number, tuning: ShaftTuning): void {
  const { blocks, width, runs, ridges, stirs } = strip;
  const share = strip.pixelsPerBlock / strip.torso;
  const floor = tuning.contrastFloor * 32 * blockLength;
  const freshWeight = tuning.motionWeight * still + (1 + tuning.motionWeight) * (1 - still);
  const slope = share * tuning.contrastSlope;
  const zero = slope * tuning.contrastZero;
  const least = share * tuning.gapEvidence;
  const most = share * tuning.fullEvidence;
  for (let block = 0; block < 2 * blocks; block++) {
    const row = block * width;
    findRidges(strip, row);
    const stay = (slope * still) / (floor + texture.now);
    const moved = (slope * freshWeight) / (floor + texture.change);
    const last = row + width - flank;
    for (let i = row + flank; i < last; i++) {
      const now = ridges[i] as number;
      let evidence = -zero;
      if (now !== 0) {
        const size = now < 0 ? -now : now;
        const change = stirs[i] as number;
        const fresh = now < 0 ? -change : change;
        evidence += size * stay;
        if (fresh > 0) evidence += (fresh < 2 * size ? fresh : 2 * size) * moved;
        if (evidence > most) evidence = most;
      }
      runs[i] = evidence < least ? least : evidence;
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
  // Sums of two neighbours, from three cells before to two cells behind the one that is judged: of brightness, and of change.
  const pairNow = (at: number): number => ((sums[at] as number) & 0xffff) + ((sums[at + 1] as number) & 0xffff);
  const pairChange = (at: number): number => ((sums[at] as number) >> 16) + ((sums[at + 1] as number) >> 16);
  let n0 = pairNow(first - 3);
  let n1 = pairNow(first - 2);
  let n2 = pairNow(first - 1);
  let n3 = pairNow(first);
  let n4 = pairNow(first + 1);
  let c0 = pairChange(first - 3);
  let c1 = pairChange(first - 2);
  let c2 = pairChange(first - 1);
  let c3 = pairChange(first);
  let c4 = pairChange(first + 1);
  let f = sums[first + 2] as number;
  for (let i = first; i < last; i++) {
    const g = sums[i + 3] as number;
    const n5 = (f & 0xffff) + (g & 0xffff);
    const c5 = (f >> 16) + (g >> 16);
    const value = ridgeOf(2 * (n2 + n3), n0, n5);
    ridges[i] = value;
    total += value < 0 ? -value : value;
    const stir = ridgeOf(2 * (c2 + c3), c0, c5);
    stirs[i] = stir;
    stirred += stir < 0 ? -stir : stir;
    n0 = n1;
    n1 = n2;
    n2 = n3;
    n3 = n4;
    n4 = n5;
    c0 = c1;
    c1 = c2;
    c2 = c3;
    c3 = c4;
    c4 = c5;
    f = g;
  }
  texture.now = total / (width - 2 * flank);
  texture.change = stirred / (width - 2 * flank);
}

function ridgeOf(middle: number, before: number, after: number): number {
  const left = middle - 4 * before;
  const right = middle - 4 * after;
  if (left > 0) return right > 0 ? (left < right ? left : right) : 0;
  if (left < 0 && right < 0) return left > right ? left : right;
  return 0;
}
