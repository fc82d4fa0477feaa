import type { LineWindow } from "./line-window.ts";
import type { BodyMarks } from "./mark-body.ts";
import { handsSdAcross, type HandsTrack } from "./predict-hands.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** For every direction of the full circle the best line out of the hands. Lengths in working pixels, evidence in nats. */
export interface LineSweep {
  /** Directions in the full circle; direction i points at i * `step` radians (x right, y down). */
  readonly directions: number;
  readonly step: number;
  /** Whether a direction of the half turn (and its opposite) is to be looked at, 0 or 1. Set by the caller; all 1 to begin with. */
  readonly wanted: Uint8Array;
  /** NaN where a direction was not looked at. */
  readonly evidence: Float32Array;
  /** Distance of the line from the window's middle, along the normal (-sin, cos). */
  readonly offset: Float32Array;
  /** Distance along the line from the foot of the window's middle to the run's far end. */
  readonly end: Float32Array;
  /** Evidence on the far side of the hands along the same line. */
  readonly through: Float32Array;
  /** Share of the line that was not there before, 0 to 1. */
  readonly fresh: Float32Array;
  readonly scratch: StripScratch;
}

/** What is known of this picture beforehand. */
export interface SweepLook {
  /** 0 to 1: how far a line that was there all along can still be the shaft; 0 where the hands have moved from where they were. */
  readonly still: number;
  readonly hands: HandsTrack;
  readonly marks: BodyMarks;
  /** Whether the rod's colour is known, so that what runs through on both sides is the rod. */
  readonly rodKnown: boolean;
  /** The hands' place from the window's middle, working pixels. */
  readonly awayX: number;
  readonly awayY: number;
}

interface StripScratch {
  readonly sums: Int32Array;
  readonly changes: Int32Array;
  readonly runs: Float32Array;
  readonly ridges: Int32Array;
  readonly stirs: Int32Array;
}

const flank = 4;

export function makeLineSweep(half: number, tuning: ShaftTuning): LineSweep {
  const directions = 2 * Math.round(180 / tuning.sweepStep);
  const cells = (Math.ceil((2 * half) / tuning.blockLength) + 2) * (2 * half + 1);
  const list = (): Float32Array => new Float32Array(directions);
  return {
    directions,
    step: (2 * Math.PI) / directions,
    wanted: new Uint8Array(directions / 2).fill(1),
    evidence: list(),
    offset: list(),
    end: list(),
    through: list(),
    fresh: list(),
    scratch: {
      sums: new Int32Array(cells),
      changes: new Int32Array(cells),
      runs: new Float32Array(cells),
      ridges: new Int32Array(cells),
      stirs: new Int32Array(cells),
    },
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
    if (sweep.wanted[direction] === 0) {
      sweep.evidence[direction] = Number.NaN;
      sweep.evidence[direction + halfTurn] = Number.NaN;
      continue;
    }
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
  distrustBody(
    sweep.scratch.runs,
    alongX ? look.marks.freeSwapped : look.marks.free,
    window,
    slope,
    forward,
    blocks,
    width,
    tuning.blockLength,
  );
  // A step of one pixel across the strip moves the line's foot: along the normal by `across`, along the line by `along`.
  const across = alongX ? cos : -sin;
  const along = alongX ? sin : cos;
  const pixelsPerBlock = tuning.blockLength / major;
  // What runs through on both sides speaks against a still line; a moving one may be the rod out of the butt.
  const through = look.rodKnown ? -tuning.rodThroughWeight : tuning.throughWeight * look.still;
  const prior = { sd: handsSdAcross(look.hands, angle) * torso, middle: -sin * look.awayX + cos * look.awayY };
  takeBest(sweep, direction, 0, 1, blocks, width, strip, across, along, pixelsPerBlock, torso, prior, through, tuning);
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
    prior,
    through,
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

/**
 * Contrast of each cell of a row against both neighbours across, in eighths of the cells' unit: 0 where the two sides disagree (an edge, not a
 * line). Returns the mean size over the row's inner cells.
 */
function findRidges(cells: Int32Array, row: number, width: number, into: Int32Array): number {
  let total = 0;
  let a = cells[row + flank - 3] as number;
  let b = cells[row + flank - 2] as number;
  let c = cells[row + flank - 1] as number;
  let d = cells[row + flank] as number;
  let e = cells[row + flank + 1] as number;
  let f = cells[row + flank + 2] as number;
  for (let i = row + flank; i < row + width - flank; i++) {
    const g = cells[i + 3] as number;
    const middle = 2 * (c + 2 * d + e);
    const left = middle - 4 * (a + b);
    const right = middle - 4 * (f + g);
    let value = 0;
    if (left > 0) value = right > 0 ? (left < right ? left : right) : 0;
    else if (right < 0) value = left > right ? left : right;
    into[i] = value;
    total += value < 0 ? -value : value;
    a = b;
    b = c;
    c = d;
    d = e;
    e = f;
    f = g;
  }
  return total / (width - 2 * flank);
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
  const { sums, changes, runs, ridges, stirs } = sweep.scratch;
  const share = tuning.blockLength / major / torso;
  const floor = tuning.contrastFloor * 32 * tuning.blockLength;
  const freshWeight = tuning.motionWeight * stillShare + (1 + tuning.motionWeight) * (1 - stillShare);
  const slope = share * tuning.contrastSlope;
  const zero = slope * tuning.contrastZero;
  const least = share * tuning.gapEvidence;
  const most = share * tuning.fullEvidence;
  for (let block = 0; block < 2 * blocks; block++) {
    const row = block * width;
    const still = (slope * stillShare) / (floor + findRidges(sums, row, width, ridges));
    const moved = (slope * freshWeight) / (floor + findRidges(changes, row, width, stirs));
    for (let i = row + flank; i < row + width - flank; i++) {
      const now = ridges[i] as number;
      let evidence = -zero;
      if (now !== 0) {
        const size = now < 0 ? -now : now;
        const change = stirs[i] as number;
        const fresh = now < 0 ? -change : change;
        evidence += size * still;
        if (fresh > 0) evidence += (fresh < 2 * size ? fresh : 2 * size) * moved;
        if (evidence > most) evidence = most;
      }
      runs[i] = evidence < least ? least : evidence;
    }
  }
}

/** What speaks for a line counts less where the body is: there a line may well be a limb's edge. */
function distrustBody(
  runs: Float32Array,
  free: Uint8Array,
  window: LineWindow,
  slope: number,
  forward: number,
  blocks: number,
  width: number,
  length: number,
): void {
  const { half, size } = window;
  const left = half - (width - 1) / 2;
  for (let block = 0; block < 2 * blocks; block++) {
    const major = block < blocks ? forward * (block + 0.5) * length : -forward * (block - blocks + 0.5) * length;
    const row = Math.round(major);
    const from = (half + row) * size + left + Math.round(slope * row);
    for (let i = flank; i < width - flank; i++) {
      const trust = free[from + i] as number;
      const evidence = runs[block * width + i] as number;
      if (trust < 255 && evidence > 0) runs[block * width + i] = (evidence * trust) / 255;
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
  prior: { readonly sd: number; readonly middle: number },
  throughWeight: number,
  tuning: ShaftTuning,
): void {
  const { runs } = sweep.scratch;
  const otherBlock = firstBlock === 0 ? blocks : 0;
  const skip = Math.max(1, Math.round((tuning.nearest * torso) / pixelsPerBlock));
  const least = Math.round((tuning.shortest * torso) / pixelsPerBlock);
  let best = -Infinity;
  let bestLine = 0;
  let bestEnd = 0;
  let bestThrough = 0;
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
    const away = ((i - flank - strip) * across - prior.middle) / prior.sd;
    // The tails are those of a Student t with 3 degrees of freedom: a pose that is far off is rare, but not that rare.
    const cost = -2 * Math.log(1 + (away * away) / 3);
    let score = top + cost;
    if (throughWeight >= 0 && score <= best) continue;
    let through = 0;
    let throughTop = 0;
    for (let block = 3 * skip; block < blocks; block++) {
      through = Math.max(0, through + (runs[(otherBlock + block) * width + i] as number));
      if (through > throughTop) throughTop = through;
    }
    score -= throughWeight * throughTop;
    if (score > best) {
      best = score;
      bestLine = i - flank - strip;
      bestEnd = end;
      bestThrough = throughTop;
    }
  }
  sweep.evidence[direction] = best;
  sweep.through[direction] = bestThrough;
  sweep.fresh[direction] = freshShare(
    sweep.scratch,
    (firstBlock + skip) * width + bestLine + strip + flank,
    bestEnd - skip,
    width,
  );
  sweep.offset[direction] = sign * bestLine * across;
  sweep.end[direction] = (bestEnd + 1) * pixelsPerBlock + sign * bestLine * along;
}

/** How much of a line's contrast has come since the background was taken: `first` is its first cell, `blocks` more follow. */
function freshShare({ ridges, stirs }: StripScratch, first: number, blocks: number, width: number): number {
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
