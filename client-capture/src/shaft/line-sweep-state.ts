import type { ShaftTuning } from "./shaft-tuning.ts";
import { makeStripLine, type StripLine } from "./judge-strip.ts";
import { makeStrip, type Strip } from "./strip.ts";

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
  /** 1 where the evidence is the opposite direction's, of the rod or of the shaft (`borrowFromRod`). */
  readonly borrowed: Uint8Array;
  /** Half log odds that the head is on this side of the hands rather than on the other; 0 without a rod. */
  readonly side: Float32Array;
  readonly strip: Strip;
  readonly line: StripLine;
  /** With more lines than this on either side of the hands every second one is judged, and those beside the best. */
  readonly mostLines: number;
}

export function makeLineSweep(half: number, tuning: ShaftTuning, mostLines = Infinity): LineSweep {
  const directions = 2 * Math.round(180 / tuning.sweepStep);
  const list = (): Float32Array => new Float32Array(directions);
  const strip = makeStrip(half);
  return {
    directions,
    step: (2 * Math.PI) / directions,
    wanted: new Uint8Array(directions / 2).fill(1),
    evidence: list(),
    offset: list(),
    end: list(),
    through: list(),
    fresh: list(),
    borrowed: new Uint8Array(directions),
    side: list(),
    strip,
    line: makeStripLine(strip.stays.length),
    mostLines,
  };
}
