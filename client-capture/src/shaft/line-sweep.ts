import { distrustBody } from "./distrust-body.ts";
import { judgeStrip } from "./judge-strip.ts";
import type { LineWindow } from "./line-window.ts";
import type { BodyMarks } from "./mark-body.ts";
import { handsSdAcross, type HandsTrack } from "./predict-hands.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import { flank, layStrip, makeStrip, sumStrip, type Strip } from "./strip.ts";
import { takeBestLine } from "./take-best-line.ts";

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
  readonly strip: Strip;
}

/** What is known of this picture beforehand. */
export interface SweepLook {
  /** 0 to 1: how far a line that was there all along can still be the shaft; 0 where the hands have moved from where they were. */
  readonly still: number;
  readonly hands: HandsTrack;
  readonly marks: BodyMarks;
  /** Whether a rod lies along the shaft, and whether its colour is known, so that what runs through on both sides is the rod. */
  readonly rodAlong: boolean;
  readonly rodKnown: boolean;
  /** The hands' place from the window's middle, working pixels. */
  readonly awayX: number;
  readonly awayY: number;
}

export function makeLineSweep(half: number, tuning: ShaftTuning): LineSweep {
  const directions = 2 * Math.round(180 / tuning.sweepStep);
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
    borrowed: new Uint8Array(directions),
    strip: makeStrip(half),
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
    sweepDirection(sweep, window, torso, look, tuning, direction);
  }
}

function sweepDirection(
  sweep: LineSweep,
  window: LineWindow,
  torso: number,
  look: SweepLook,
  tuning: ShaftTuning,
  direction: number,
): void {
  const { strip } = sweep;
  const angle = direction * sweep.step;
  const sd = handsSdAcross(look.hands, angle);
  const reach = Math.min(tuning.reach * torso, window.half - flank - 2);
  const aside = torso * Math.min(tuning.offsetReach, tuning.offsetSds * sd + tuning.offsetLeast);
  const middle = -Math.sin(angle) * look.awayX + Math.cos(angle) * look.awayY;
  layStrip(strip, window, angle, reach, aside + Math.abs(middle));
  strip.torso = torso;
  strip.priorMiddle = middle;
  strip.priorSd = sd * torso;
  // What runs through on both sides speaks against a still line; a moving one may be the rod out of the butt.
  strip.throughWeight = throughWeight(look, tuning);
  sumStrip(strip, window);
  judgeStrip(strip, look.still, tuning);
  distrustBody(strip, window, look.marks);
  takeBestLine(sweep, window, direction, 1, tuning);
  takeBestLine(sweep, window, direction + sweep.directions / 2, -1, tuning);
}

function throughWeight({ rodKnown, rodAlong, still }: SweepLook, tuning: ShaftTuning): number {
  if (rodKnown) return -tuning.rodThroughWeight;
  return rodAlong ? 0 : tuning.throughWeight * still;
}
