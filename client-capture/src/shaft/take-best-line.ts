import type { LineSweep } from "./line-sweep-state.ts";
import type { LineWindow } from "./line-window.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import { flank, type Strip } from "./strip.ts";

/**
 * The best line of one side of the strip, by its best run outwards, the hands' place, and what runs through on the other side, written to
 * `sweep` at `direction`. `sign` 1 takes the strip's forward side, -1 the backward one.
 */
export function takeBestLine(
  sweep: LineSweep,
  window: LineWindow,
  direction: number,
  sign: 1 | -1,
  tuning: ShaftTuning,
): void {
  const { strip } = sweep;
  const { runs, width, lines, across, along, pixelsPerBlock, torso, priorMiddle, priorSd, throughWeight } = strip;
  const { nearest, shortest, forwardBlocks, backwardBlocks } = strip;
  const firstBlock = sign === 1 ? 0 : strip.blocks;
  const otherBlock = strip.blocks - firstBlock;
  const [blocks, otherBlocks] = sign === 1 ? [forwardBlocks, backwardBlocks] : [backwardBlocks, forwardBlocks];
  // Of hands that may be anywhere in a wide strip each place is the less likely.
  const spread = tuning.spreadCost * Math.max(0, Math.log(priorSd / (tuning.offsetSd * torso)));
  let best = -Infinity;
  let bestLine = 0;
  let bestEnd = 0;
  let bestThrough = 0;
  for (let i = flank; i < width - flank; i++) {
    let sum = 0;
    let top = -Infinity;
    let end = shortest;
    for (let block = nearest, at = (firstBlock + nearest) * width + i; block < blocks; block++, at += width) {
      sum += runs[at] as number;
      if (sum > top && block >= shortest) {
        top = sum;
        end = block;
      }
    }
    const away = ((i - flank - lines) * across - priorMiddle) / priorSd;
    // The tails are those of a Student t with 3 degrees of freedom: a pose that is far off is rare, but not that rare.
    let score = top - spread - 2 * Math.log(1 + (away * away) / 3);
    if (throughWeight >= 0 && score <= best) continue;
    let through = 0;
    let throughTop = 0;
    for (
      let block = 3 * nearest, at = (otherBlock + 3 * nearest) * width + i;
      block < otherBlocks;
      block++, at += width
    ) {
      through += runs[at] as number;
      if (through < 0) through = 0;
      else if (through > throughTop) throughTop = through;
    }
    score -= throughWeight * throughTop;
    if (score > best) {
      best = score;
      bestLine = i - flank - lines;
      bestEnd = end;
      bestThrough = throughTop;
    }
  }
  const offset = sign * bestLine * across;
  const end = (bestEnd + 1) * pixelsPerBlock + sign * bestLine * along;
  const first = (firstBlock + nearest) * width + bestLine + lines + flank;
  sweep.through[direction] = bestThrough;
  sweep.fresh[direction] = freshShare(strip, first, bestEnd - nearest);
  sweep.offset[direction] = offset;
  sweep.end[direction] = end;
  const leaves =
    bestEnd >= blocks - 1 || leavesPicture(window, direction * sweep.step, offset, end + 2 * pixelsPerBlock);
  const dip = tuning.startCost * deepestDip(strip, first, bestEnd - nearest);
  sweep.evidence[direction] = best - (leaves ? tuning.leavesCost : 0) - dip;
}

/** How far a run's evidence falls under nothing on its way out from the hands: what a line lacks there is no part of it. `first` is its first cell, `blocks` more follow. */
function deepestDip({ runs, width }: Strip, first: number, blocks: number): number {
  let sum = 0;
  let least = 0;
  for (let block = 0; block <= blocks; block++) {
    sum += runs[first + block * width] as number;
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

/** How much of a line's contrast has come since the background was taken: `first` is its first cell, `blocks` more follow. */
function freshShare({ ridges, stirs, width }: Strip, first: number, blocks: number): number {
  let total = 1;
  let fresh = 0;
  for (let block = 0; block <= blocks; block++) {
    const now = ridges[first + block * width] as number;
    const change = stirs[first + block * width] as number;
    total += Math.abs(now);
    if (now * change > 0) fresh += Math.min(Math.abs(now), Math.abs(change));
  }
  return fresh / total;
}
