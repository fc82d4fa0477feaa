import type { LineWindow } from "./line-window.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Lines beside the outermost ones that are judged, for their contrast. */
export const flank = 4;
/** Pixels along a line that are summed before contrast is judged. */
export const blockLength = 4;

/**
 * A strip of parallel lines through a window, cut across into blocks. Cells are row-major: a row is a block, a column a line; rows 0 to
 * `blocks` - 1 lead forward from the middle, rows `blocks` to 2 * `blocks` - 1 backward. Changed in place, allocated once.
 */
export interface Strip {
  blocks: number;
  /** Blocks that are filled and judged, forward and backward: from `nearest` on, to the last one that has a part inside the picture, but no fewer than a shaft takes at least. */
  nearest: number;
  shortest: number;
  forwardBlocks: number;
  backwardBlocks: number;
  width: number;
  /** Lines on either side of the middle one, how far apart those are that are judged, the column of the first one, and how many there are. */
  lines: number;
  apart: number;
  firstLine: number;
  judged: number;
  /** Whether the lines lead along x rather than along y; shift across for a step along; 1 or -1. */
  alongX: boolean;
  slope: number;
  forward: number;
  /** A step of one line moves its foot this far along the normal, and this far along the line. */
  across: number;
  along: number;
  pixelsPerBlock: number;
  /** A torso in working pixels; where the hands lie across the strip, and one sd of that. */
  torso: number;
  priorMiddle: number;
  priorSd: number;
  /** Share of what is found on the far side of the hands that counts against a line. */
  throughWeight: number;
  /** Sums of a cell and the next one across. Brightness in the low 16 bits, change in the high ones. */
  readonly pairs: Int32Array;
  /** What the contrast of a row's cells, in brightness and in change, is multiplied with: by the row's texture. */
  readonly stays: Float64Array;
  readonly moves: Float64Array;
  /** Where the middle of each row's first cell lies in the body marks, and how far apart there those of two lines lie. */
  readonly marksAt: Int32Array;
  marksApart: number;
  /** Evidence that no contrast at all falls short by, and the least and the most of a cell, nats. */
  zero: number;
  least: number;
  most: number;
  /** Evidence of each cell that is judged, nats: rows of `judged` cells. */
  readonly runs: Float32Array;
}

export function makeStrip(half: number): Strip {
  const rows = Math.ceil((2 * half) / blockLength) + 2;
  const cells = rows * (2 * half + 1);
  return {
    blocks: 0,
    nearest: 0,
    shortest: 0,
    forwardBlocks: 0,
    backwardBlocks: 0,
    width: 0,
    lines: 0,
    apart: 1,
    firstLine: 0,
    judged: 0,
    alongX: true,
    slope: 0,
    forward: 1,
    across: 1,
    along: 0,
    pixelsPerBlock: 1,
    torso: 1,
    priorMiddle: 0,
    priorSd: 1,
    throughWeight: 0,
    pairs: new Int32Array(cells),
    stays: new Float64Array(rows),
    moves: new Float64Array(rows),
    marksAt: new Int32Array(rows),
    marksApart: 1,
    zero: 0,
    least: 0,
    most: 0,
    runs: new Float32Array(cells),
  };
}

/**
 * Lays the strip along `angle`, with lines up to `aside` working pixels off the middle; with more than `mostLines` on either side every second one is judged. `torso` in
 * working pixels.
 */
export function layStrip(
  strip: Strip,
  window: LineWindow,
  angle: number,
  torso: number,
  aside: number,
  mostLines: number,
  tuning: ShaftTuning,
): void {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const alongX = Math.abs(cos) >= Math.abs(sin);
  const major = alongX ? Math.abs(cos) : Math.abs(sin);
  const reach = Math.min(tuning.reach * torso, window.half - flank - 2);
  strip.alongX = alongX;
  strip.slope = alongX ? sin / cos : cos / sin;
  strip.forward = alongX && cos < 0 ? -1 : 1;
  strip.across = alongX ? cos : -sin;
  strip.along = alongX ? sin : cos;
  strip.lines = Math.max(1, Math.min(Math.ceil(aside / major), window.half - flank - Math.ceil(reach * 0.71) - 2));
  strip.width = 2 * (strip.lines + flank) + 1;
  strip.apart = strip.lines > mostLines ? 2 : 1;
  strip.judged = strip.apart === 1 ? 2 * strip.lines + 1 : 2 * Math.floor(strip.lines / 2) + 1;
  strip.firstLine = flank + (strip.apart === 1 ? 0 : strip.lines % 2);
  strip.blocks = Math.floor((reach * major) / blockLength);
  strip.pixelsPerBlock = blockLength / major;
  strip.torso = torso;
  strip.nearest = Math.max(1, Math.round((tuning.nearest * torso) / strip.pixelsPerBlock));
  strip.shortest = Math.round((tuning.shortest * torso) / strip.pixelsPerBlock);
  strip.forwardBlocks = blocksInside(strip, window, strip.forward);
  strip.backwardBlocks = blocksInside(strip, window, -strip.forward);
}

/** How many blocks leading away from the middle (`step` 1 or -1 along the axis that the lines lead along) there are up to the picture's edge. */
function blocksInside({ alongX, slope, width, blocks, shortest }: Strip, window: LineWindow, step: number): number {
  const { centreX, centreY, pictureWidth, pictureHeight } = window;
  const aside = (width + 1) / 2;
  const along = alongX ? roomAhead(centreX, pictureWidth, step) : roomAhead(centreY, pictureHeight, step);
  const drift = slope * step;
  const across = alongX ? roomAhead(centreY, pictureHeight, drift) : roomAhead(centreX, pictureWidth, drift);
  const inside = Math.ceil(Math.min(along, drift === 0 ? Infinity : (across + aside) / Math.abs(drift)) / blockLength);
  return Math.min(blocks, Math.max(inside, shortest + 2));
}

/** The filled block that comes after one: the forward ones first, then the backward ones. */
export const blockAfter = ({ blocks, forwardBlocks, nearest }: Strip, block: number): number =>
  block + 1 === forwardBlocks ? blocks + nearest : block + 1;

const roomAhead = (centre: number, size: number, step: number): number => (step > 0 ? size - centre : centre + 1);

/** Sums the window's pixels of each block along each line and the next one. */
export function sumStrip(strip: Strip, window: LineWindow): void {
  const { blocks, nearest, width, slope, forward, pairs } = strip;
  const { half, size, plane } = window;
  const left = half - (width - 1) / 2;
  // One step along the lines, and one across them, through the window's numbers.
  const on = strip.alongX ? 1 : size;
  const beside = strip.alongX ? size : 1;
  for (let side = 0; side < 2; side++) {
    const step = side === 0 ? forward : -forward;
    const last = side === 0 ? strip.forwardBlocks : strip.backwardBlocks;
    for (let block = nearest; block < last; block++) {
      const row = (side * blocks + block) * width;
      const first = step * (block * blockLength + side);
      let a = (half + first) * on + (left + Math.round(slope * first)) * beside;
      let b = (half + first + step) * on + (left + Math.round(slope * (first + step))) * beside;
      let c = (half + first + 2 * step) * on + (left + Math.round(slope * (first + 2 * step))) * beside;
      let d = (half + first + 3 * step) * on + (left + Math.round(slope * (first + 3 * step))) * beside;
      let before = (plane[a] as number) + (plane[b] as number) + (plane[c] as number) + (plane[d] as number);
      for (let at = row; at < row + width - 1; at++) {
        a += beside;
        b += beside;
        c += beside;
        d += beside;
        const sum = (plane[a] as number) + (plane[b] as number) + (plane[c] as number) + (plane[d] as number);
        pairs[at] = before + sum;
        before = sum;
      }
    }
  }
}
