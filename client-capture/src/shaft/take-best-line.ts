import { judgeLine, type StripLine } from "./judge-strip.ts";
import type { LineSweep } from "./line-sweep-state.ts";
import type { LineWindow } from "./line-window.ts";
import type { BodyMarks } from "./mark-body.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import { flank, type Strip } from "./strip.ts";

/** One side of a strip: where its blocks begin, how many there are, and the same of the other side. */
interface Side {
  first: number;
  blocks: number;
  otherFirst: number;
  otherBlocks: number;
  /** Evidence that each line of hands that may be anywhere in a wide strip loses, being the less likely. */
  spread: number;
}

const side: Side = { first: 0, blocks: 0, otherFirst: 0, otherBlocks: 0, spread: 0 };
/** What `scoreLine` found last: the evidence, the last block of the run, and what runs through on the other side. */
const found = { score: 0, end: 0, through: 0 };

/**
 * The best line of one side of the strip, by its best run outwards, the hands' place, and what runs through on the other side, written to
 * `sweep` at `direction`. `sign` 1 takes the strip's forward side, -1 the backward one. Where not all lines were judged, those beside the best are now.
 */
export function takeBestLine(
  sweep: LineSweep,
  window: LineWindow,
  marks: BodyMarks,
  direction: number,
  sign: 1 | -1,
  tuning: ShaftTuning,
): void {
  const { strip, line } = sweep;
  const { runs, judged, apart, firstLine } = strip;
  takeSide(strip, sign, tuning);
  let best = -Infinity;
  let middle = firstLine;
  for (let i = 0; i < judged; i++) {
    scoreLine(strip, runs, i, judged, firstLine + i * apart, best);
    if (found.score <= best) continue;
    best = found.score;
    middle = firstLine + i * apart;
  }
  const besides = best > 0 ? apart - 1 : 0;
  best = -Infinity;
  for (let column = middle - besides; column <= middle + besides; column++) {
    judgeLine(strip, marks, column, line);
    scoreLine(strip, line.runs, 0, 1, column, best);
    if (found.score <= best) continue;
    best = found.score;
    writeLine(sweep, window, direction, sign, column, tuning);
  }
}

/** Writes what `scoreLine` found of the line in `column`. */
function writeLine(
  sweep: LineSweep,
  window: LineWindow,
  direction: number,
  sign: 1 | -1,
  column: number,
  tuning: ShaftTuning,
): void {
  const { strip, line } = sweep;
  const { nearest, across, along, pixelsPerBlock } = strip;
  const { end: last, score, through } = found;
  const aside = sign * (column - flank - strip.lines);
  const offset = aside * across;
  const end = (last + 1) * pixelsPerBlock + aside * along;
  const first = side.first + nearest;
  const leaves =
    last >= side.blocks - 1 || leavesPicture(window, direction * sweep.step, offset, end + 2 * pixelsPerBlock);
  const dip = tuning.startCost * deepestDip(line, first, last - nearest);
  sweep.through[direction] = through;
  sweep.fresh[direction] = freshShare(line, first, last - nearest);
  sweep.offset[direction] = offset;
  sweep.end[direction] = end;
  sweep.evidence[direction] = score - (leaves ? tuning.leavesCost : 0) - dip;
}

function takeSide(strip: Strip, sign: 1 | -1, tuning: ShaftTuning): void {
  const { blocks, forwardBlocks, backwardBlocks, priorSd, torso } = strip;
  side.first = sign === 1 ? 0 : blocks;
  side.otherFirst = blocks - side.first;
  side.blocks = sign === 1 ? forwardBlocks : backwardBlocks;
  side.otherBlocks = sign === 1 ? backwardBlocks : forwardBlocks;
  side.spread = tuning.spreadCost * Math.max(0, Math.log(priorSd / (tuning.offsetSd * torso)));
}

/** Scores the line in `column`, whose evidence of block n is `runs[n * step + from]`. What cannot surpass `best` is not looked at any further. */
function scoreLine(
  { nearest, shortest, lines, across, priorMiddle, priorSd, throughWeight }: Strip,
  runs: Float32Array,
  from: number,
  step: number,
  column: number,
  best: number,
): void {
  let sum = 0;
  let top = -Infinity;
  let end = shortest;
  for (let block = nearest, at = (side.first + nearest) * step + from; block < side.blocks; block++, at += step) {
    sum += runs[at] as number;
    if (sum > top && block >= shortest) {
      top = sum;
      end = block;
    }
  }
  const away = ((column - flank - lines) * across - priorMiddle) / priorSd;
  // The tails are those of a Student t with 3 degrees of freedom: a pose that is far off is rare, but not that rare.
  found.score = top - side.spread - 2 * Math.log(1 + (away * away) / 3);
  if (found.score <= best) return;
  let through = 0;
  let throughTop = 0;
  for (
    let block = 3 * nearest, at = (side.otherFirst + 3 * nearest) * step + from;
    block < side.otherBlocks;
    block++, at += step
  ) {
    through += runs[at] as number;
    if (through < 0) through = 0;
    else if (through > throughTop) throughTop = through;
  }
  found.score -= throughWeight * throughTop;
  found.end = end;
  found.through = throughTop;
}

/** How far a run's evidence falls under nothing on its way out from the hands: what a line lacks there is no part of it. `first` is its first block, `blocks` more follow. */
function deepestDip({ runs }: StripLine, first: number, blocks: number): number {
  let sum = 0;
  let least = 0;
  for (let block = first; block <= first + blocks; block++) {
    sum += runs[block] as number;
    if (sum < least) least = sum;
  }
  return -least;
}

/** Whether the point `end` out along the line lies outside of the picture. */
function leavesPicture(window: LineWindow, angle: number, offset: number, end: number): boolean {
  const x = window.centreX - Math.sin(angle) * offset + Math.cos(angle) * end;
  const y = window.centreY + Math.cos(angle) * offset + Math.sin(angle) * end;
  return x < 0 || y < 0 || x >= window.pictureWidth || y >= window.pictureHeight;
}

/** How much of a line's contrast has come since the background was taken: `first` is its first block, `blocks` more follow. */
function freshShare({ ridges, stirs }: StripLine, first: number, blocks: number): number {
  let total = 1;
  let fresh = 0;
  for (let block = first; block <= first + blocks; block++) {
    const now = ridges[block] as number;
    const change = stirs[block] as number;
    total += Math.abs(now);
    if (now * change > 0) fresh += Math.min(Math.abs(now), Math.abs(change));
  }
  return fresh / total;
}
