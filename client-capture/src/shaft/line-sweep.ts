import type { LineWindow } from "./line-window.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** For every direction of the full circle the best line out of the hands. Lengths in working pixels, evidence in nats. */
export interface LineSweep {
  /** Directions in the full circle; direction i points at i * `step` radians (x right, y down). */
  readonly directions: number;
  readonly step: number;
  readonly evidence: Float32Array;
  /** Distance of the line from the window's middle, along the normal (-sin, cos). */
  readonly offset: Float32Array;
  /** Distance along the line from the foot of the window's middle to the run's far end. */
  readonly end: Float32Array;
  readonly scratch: StripScratch;
}

/** What is known of this picture beforehand. */
export interface SweepLook {
  /** 0 to 1: how far a line that was there all along can still be the shaft; 0 where the hands have moved from where they were. */
  readonly still: number;
  /** Standard deviation of the hands' place across the shaft, torso lengths. */
  readonly offsetSd: number;
}

interface StripScratch {
  readonly sums: Int32Array;
  readonly changes: Int32Array;
  readonly runs: Float32Array;
}

const flank = 4;

export function makeLineSweep(half: number, tuning: ShaftTuning): LineSweep {
  const directions = 2 * Math.round(180 / tuning.sweepStep);
  const cells = (Math.ceil((2 * half) / tuning.blockLength) + 2) * (2 * half + 1);
  const list = (): Float32Array => new Float32Array(directions);
  return {
    directions,
    step: (2 * Math.PI) / directions,
    evidence: list(),
    offset: list(),
    end: list(),
    scratch: { sums: new Int32Array(cells), changes: new Int32Array(cells), runs: new Float32Array(cells) },
  };
}

/**
 * Evidence for a long thin straight thing out of the window's middle, for every direction and every parallel line within the strip.
 * Along a line the contrast of its middle against both sides is judged block by block, by the local texture, and turned into evidence;
 * the best run from the hands outwards decides where the thing ends. `torso` in working pixels.
 */
export function sweepLines(
  sweep: LineSweep,
  window: LineWindow,
  torso: number,
  look: SweepLook,
  tuning: ShaftTuning,
): void {
  const halfTurn = sweep.directions / 2;
  for (let direction = 0; direction < halfTurn; direction++) {
    sweepStrip(sweep, window, torso, look, tuning, direction);
  }
}

function sweepStrip(
  sweep: LineSweep,
  window: LineWindow,
  torso: number,
  look: SweepLook,
  tuning: ShaftTuning,
  direction: number,
): void {
  const angle = direction * sweep.step;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const alongX = Math.abs(cos) >= Math.abs(sin);
  const major = alongX ? Math.abs(cos) : Math.abs(sin);
  const slope = alongX ? sin / cos : cos / sin;
  const forward = alongX && cos < 0 ? -1 : 1;
  const reach = Math.min(tuning.reach * torso, window.half - flank - 2);
  const strip = Math.min(
    Math.ceil((tuning.offsetReach * torso) / major),
    window.half - flank - Math.ceil(reach * 0.71) - 2,
  );
  const width = 2 * (strip + flank) + 1;
  const blocks = Math.floor((reach * major) / tuning.blockLength);
  const { sums, changes } = sweep.scratch;
  const nowPlane = alongX ? window.nowSwapped : window.now;
  const changePlane = alongX ? window.changeSwapped : window.change;
  addStrip(sums, nowPlane, window, slope, forward, blocks, width, tuning.blockLength);
  addStrip(changes, changePlane, window, slope, forward, blocks, width, tuning.blockLength);
  judgeStrip(sweep, blocks, width, torso, major, look.still, tuning);
  // A step of one pixel across the strip moves the line's foot: along the normal by `across`, along the line by `along`.
  const across = alongX ? cos : -sin;
  const along = alongX ? sin : cos;
  const pixelsPerBlock = tuning.blockLength / major;
  takeBest(sweep, direction, 0, 1, blocks, width, strip, across, along, pixelsPerBlock, torso, look.offsetSd, tuning);
  takeBest(
    sweep,
    direction + sweep.directions / 2,
    blocks,
    -1,
    blocks,
    width,
    strip,
    across,
    along,
    pixelsPerBlock,
    torso,
    look.offsetSd,
    tuning,
  );
}

/** Sums of `length` pixels along the lines: blocks 0.. go forward from the middle, blocks `blocks`.. backward. */
function addStrip(
  into: Int32Array,
  plane: Int16Array,
  window: LineWindow,
  slope: number,
  forward: number,
  blocks: number,
  width: number,
  length: number,
): void {
  const { half, size } = window;
  const left = half - (width - 1) / 2;
  for (let side = 0; side < 2; side++) {
    const step = side === 0 ? forward : -forward;
    for (let block = 0; block < blocks; block++) {
      const row = (side * blocks + block) * width;
      for (let pixel = 0; pixel < length; pixel++) {
        const major = step * (block * length + pixel + side);
        const from = (half + major) * size + left + Math.round(slope * major);
        if (pixel === 0) for (let i = 0; i < width; i++) into[row + i] = plane[from + i] as number;
        else for (let i = 0; i < width; i++) into[row + i] = (into[row + i] as number) + (plane[from + i] as number);
      }
    }
  }
}

/** Contrast of the strip's cells against both neighbours of the same cell: 0 where the two sides disagree (an edge, not a line). */
function ridge(cells: Int32Array, at: number): number {
  const middle = ((cells[at - 1] as number) + 2 * (cells[at] as number) + (cells[at + 1] as number)) / 4;
  const left = middle - ((cells[at - 2] as number) + (cells[at - 3] as number)) / 2;
  const right = middle - ((cells[at + 2] as number) + (cells[at + 3] as number)) / 2;
  if (left > 0) return right > 0 ? Math.min(left, right) : 0;
  return right < 0 ? Math.max(left, right) : 0;
}

/** Turns the sums into evidence per block and line, in `scratch.runs`. */
function judgeStrip(
  sweep: LineSweep,
  blocks: number,
  width: number,
  torso: number,
  major: number,
  stillShare: number,
  tuning: ShaftTuning,
): void {
  const { sums, changes, runs } = sweep.scratch;
  const share = tuning.blockLength / major / torso;
  const floor = tuning.contrastFloor * 4 * tuning.blockLength;
  const inner = width - 2 * flank;
  for (let block = 0; block < 2 * blocks; block++) {
    const row = block * width;
    let texture = 0;
    let stir = 0;
    for (let i = flank; i < width - flank; i++) {
      texture += Math.abs(ridge(sums, row + i));
      stir += Math.abs(ridge(changes, row + i));
    }
    const still = 1 / (floor + texture / inner);
    const moved = 1 / (floor + stir / inner);
    for (let i = flank; i < width - flank; i++) {
      const now = ridge(sums, row + i);
      const change = ridge(changes, row + i);
      const lasting = Math.abs(now) * still;
      const fresh = now * change > 0 ? Math.min(2 * Math.abs(now), Math.abs(change)) * moved : 0;
      const strength =
        stillShare * (lasting + tuning.motionWeight * fresh) + (1 - stillShare) * (1 + tuning.motionWeight) * fresh;
      const evidence = tuning.contrastSlope * (strength - tuning.contrastZero);
      runs[row + i] = share * Math.max(tuning.gapEvidence, Math.min(tuning.fullEvidence, evidence));
    }
  }
}

/** The best line of one side of the strip, by its best run outwards, the hands' place, and what runs through on the other side. */
function takeBest(
  sweep: LineSweep,
  direction: number,
  firstBlock: number,
  sign: 1 | -1,
  blocks: number,
  width: number,
  strip: number,
  across: number,
  along: number,
  pixelsPerBlock: number,
  torso: number,
  offsetSd: number,
  tuning: ShaftTuning,
): void {
  const { runs } = sweep.scratch;
  const otherBlock = firstBlock === 0 ? blocks : 0;
  const skip = Math.max(1, Math.round((tuning.nearest * torso) / pixelsPerBlock));
  const least = Math.round((tuning.shortest * torso) / pixelsPerBlock);
  let best = -Infinity;
  let bestLine = 0;
  let bestEnd = 0;
  for (let i = flank; i < width - flank; i++) {
    let sum = 0;
    let top = -Infinity;
    let end = least;
    for (let block = skip; block < blocks; block++) {
      sum += runs[(firstBlock + block) * width + i] as number;
      if (sum > top && block >= least) {
        top = sum;
        end = block;
      }
    }
    const away = ((i - flank - strip) * across) / (offsetSd * torso);
    const prior = -Math.min(0.5 * away * away, 4);
    let score = top + prior;
    if (score <= best) continue;
    let through = 0;
    let throughTop = 0;
    for (let block = 3 * skip; block < blocks; block++) {
      through += runs[(otherBlock + block) * width + i] as number;
      if (through > throughTop) throughTop = through;
    }
    score -= tuning.throughWeight * throughTop;
    if (score > best) {
      best = score;
      bestLine = i - flank - strip;
      bestEnd = end;
    }
  }
  sweep.evidence[direction] = best;
  sweep.offset[direction] = sign * bestLine * across;
  sweep.end[direction] = (bestEnd + 1) * pixelsPerBlock + sign * bestLine * along;
}
