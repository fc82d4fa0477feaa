import { degrees, radiansFromDegrees } from "@overcue/shared-geometry/units";
import type { FanChange } from "./fan-change.ts";
import { placeIn } from "./place-in.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** A fan out of the hands: what a shaft leaves that turns while the shutter is open. Lengths in pixels of a `FanChange`. */
export interface Fan {
  /** Direction of its middle, and half of how far it spreads, radians. */
  readonly angle: number;
  readonly half: number;
  /** How far its middle passes beside the hands, along the normal (-sin, cos). */
  readonly offset: number;
  /** How far out of the hands it goes. */
  readonly end: number;
  /** 1 brighter than what was there, -1 darker. */
  readonly sign: 1 | -1;
  /** Nats. */
  readonly evidence: number;
}

/** Where fans are looked for; pixels of the `FanChange`. */
export interface FanLook {
  readonly x: number;
  readonly y: number;
  readonly torso: number;
  /** Standard deviation of the hands' place along the normal of a direction, torso lengths. */
  readonly sdAcross: (angle: number) => number;
  /** How far something at a place is trusted to be no limb, 0 to 1. */
  readonly trust: (x: number, y: number) => number;
}

/** Half widths that are tried, radians: from where a line is a line no more to what a full swing leaves at 1/60 s. */
export const fanHalves: readonly number[] = [2, 3.2, 5, 7.5, 11].map((half) => radiansFromDegrees(degrees(half)));
const directions = 120;
/** Pixels along a fan that are judged together, and how many of them are read. */
const blockLength = 4;
const reads = 2;
/** A shaft and the hands that carry it turn about a point behind the grip: so many torso lengths. */
export const fanPivot = 0.25;

/** Scratch, grown as needed: running sums across each block, and the block's own texture. One sweep at a time. */
let sums = new Float64Array(0);
let texture = new Float64Array(0);
let wide = 0;
/** From where to where in `sums`, counted from a fan's middle, its inside and its two sides go: for each half width and block `spanCells` numbers. */
let spans = new Int32Array(0);
const spanCells = 6;

/** The best fan of each direction and width, in no order; those without any evidence left out. */
export function sweepFans(change: FanChange, look: FanLook, tuning: ShaftTuning): readonly Fan[] {
  const fans: Fan[] = [];
  const mostBlocks = layBlocks(look.torso, tuning);
  for (let i = 0; i < directions; i++) {
    const angle = (i * 2 * Math.PI) / directions;
    const sd = look.sdAcross(angle);
    const aside = look.torso * Math.min(tuning.fanAside, 2 * sd + tuning.offsetLeast);
    const blocks = sumBlocks(change, look, angle, aside, mostBlocks, tuning);
    let firstSpan = 0;
    for (const half of fanHalves) {
      const fan = bestFan(look, angle, half, firstSpan, aside, sd * look.torso, blocks, tuning);
      if (fan !== null) fans.push(fan);
      firstSpan += mostBlocks * spanCells;
    }
  }
  return fans;
}

const startOf = (torso: number, block: number, { fanNearest }: ShaftTuning): number =>
  fanNearest * torso + block * blockLength;

/** Half the fan's breadth at `along`, with what a shaft has of its own. */
export const fanBreadth = (half: number, along: number, torso: number): number =>
  Math.max(1.5, Math.tan(half) * (along + fanPivot * torso));

/** Works out `spans`; returns how many blocks a fan takes at most. Between inside and sides a quarter of the breadth is left out. */
function layBlocks(torso: number, tuning: ShaftTuning): number {
  const count = Math.max(0, Math.floor((tuning.fanReach * torso - tuning.fanNearest * torso) / blockLength));
  const cells = fanHalves.length * count * spanCells;
  if (spans.length < cells) spans = new Int32Array(cells);
  let at = 0;
  for (const half of fanHalves) {
    for (let block = 0; block < count; block++) {
      const breadth = fanBreadth(half, startOf(torso, block, tuning) + blockLength / 2, torso);
      const gap = breadth + Math.max(1, 0.25 * breadth);
      const side = gap + Math.max(2, breadth);
      for (const edge of [-breadth, breadth, -side, -gap, gap, side]) spans[at++] = Math.round(edge + 0.5);
    }
  }
  return count;
}

/** Sums what has come across each block; returns how many blocks, of `count`, lie inside the picture. */
function sumBlocks(
  change: FanChange,
  { x, y, torso }: FanLook,
  angle: number,
  aside: number,
  count: number,
  tuning: ShaftTuning,
): number {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const widest = fanHalves.at(-1) ?? 0;
  const outermost = (along: number): number => Math.ceil(aside + 3.5 * fanBreadth(widest, along, torso) + 3);
  wide = outermost(tuning.fanReach * torso);
  const row = 2 * wide + 2;
  if (sums.length < count * row) sums = new Float64Array(count * row);
  if (texture.length < count) texture = new Float64Array(count);
  for (let block = 0; block < count; block++) {
    const start = startOf(torso, block, tuning);
    const middle = start + blockLength / 2;
    const [middleX, middleY] = [x + cos * middle, y + sin * middle];
    if (middleX < 0 || middleY < 0 || middleX >= change.width || middleY >= change.height) return block;
    const reach = outermost(middle);
    let sum = 0;
    let size = 0;
    for (let across = -reach; across <= reach; across++) {
      let value = 0;
      for (let read = 0; read < reads; read++) {
        const along = start + ((read + 0.5) * blockLength) / reads;
        const at = placeIn(change, x + cos * along - sin * across, y + sin * along + cos * across);
        if (at >= 0) value += change.values[at] as number;
      }
      sums[block * row + across + wide] = sum;
      sum += value / reads;
      size += Math.abs(value) / reads;
    }
    sums[block * row + reach + 1 + wide] = sum;
    texture[block] = size / (2 * reach + 1);
  }
  return count;
}

/** The mean of what has come between two places of `sums`. */
const meanBetween = (from: number, to: number): number =>
  to > from ? ((sums[to] as number) - (sums[from] as number)) / (to - from) : 0;

/**
 * The fan of one direction and width that stands out best, bright or dark: its best run outwards, less what its place beside the hands makes unlikely. `firstSpan`: where
 * the width's spans begin. What can't surpass the best so far is not looked at any further.
 */
function bestFan(
  { x, y, torso, trust }: FanLook,
  angle: number,
  half: number,
  firstSpan: number,
  aside: number,
  sd: number,
  blocks: number,
  tuning: ShaftTuning,
): Fan | null {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const share = blockLength / torso;
  const most = share * tuning.fullEvidence;
  const step = Math.max(1, Math.round(Math.tan(half) * torso * 0.5));
  const row = 2 * wide + 2;
  let best: Fan | null = null;
  for (let offset = -Math.floor(aside / step) * step; offset <= aside; offset += step) {
    const unlikely = 2 * Math.log(1 + (offset / sd) ** 2 / 3);
    let bright = -unlikely;
    let dark = -unlikely;
    for (let block = 0; block < blocks; block++) {
      const toBeat = best?.evidence ?? 0;
      if (Math.max(bright, dark) + (blocks - block) * most <= toBeat) break;
      const along = startOf(torso, block, tuning) + blockLength / 2;
      const contrast = contrastOf(block * row + offset + wide, firstSpan + block * spanCells);
      const seen = (tuning.contrastSlope * Math.abs(contrast)) / (tuning.fanFloor + (texture[block] as number));
      let found = share * judged(seen, tuning);
      if (found > 0) found *= trust(x + cos * along - sin * offset, y + sin * along + cos * offset);
      const against = share * judged(-seen, tuning);
      bright += contrast > 0 ? found : against;
      dark += contrast < 0 ? found : against;
      if (along < tuning.fanShortest * torso) continue;
      const evidence = Math.max(bright, dark);
      if (evidence <= toBeat) continue;
      best = { angle, half, offset, end: along + blockLength / 2, sign: bright > dark ? 1 : -1, evidence };
    }
  }
  return best;
}

/** What a block's inside differs by from both sides, where from both in one direction; 0 otherwise. `middle`: where the fan's middle lies in `sums`; `span`: where its block's spans do. */
function contrastOf(middle: number, span: number): number {
  const at = (cell: number): number => middle + (spans[span + cell] as number);
  const inside = meanBetween(at(0), at(1));
  const left = inside - meanBetween(at(2), at(3));
  const right = inside - meanBetween(at(4), at(5));
  if (left > 0 && right > 0) return Math.min(left, right);
  return left < 0 && right < 0 ? Math.max(left, right) : 0;
}

/** Evidence of a block per torso of its length. */
const judged = (seen: number, { fanZero, gapEvidence, fullEvidence }: ShaftTuning): number =>
  Math.max(gapEvidence, Math.min(fullEvidence, seen - fanZero));
