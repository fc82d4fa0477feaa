import { judgeStrip } from "./judge-strip.ts";
import type { LineSweep } from "./line-sweep-state.ts";
import type { LineWindow } from "./line-window.ts";
import type { BodyMarks } from "./mark-body.ts";
import { handsSdAcross, type HandsTrack } from "./hands-track.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import { layStrip, sumStrip } from "./strip.ts";
import { takeBestLine } from "./take-best-line.ts";

/** What is known of this picture beforehand. */
export interface SweepLook {
  /** 0 to 1: how far a line that was there all along can still be the shaft; 0 where the hands have moved from where they were. */
  readonly still: number;
  readonly hands: HandsTrack;
  readonly marks: BodyMarks;
  /** Whether a rod lies along the shaft: what runs through on both sides may then be the rod. */
  readonly rodAlong: boolean;
  /** The hands' place from the window's middle, working pixels. */
  readonly awayX: number;
  readonly awayY: number;
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
  const aside = torso * Math.min(tuning.offsetReach, tuning.offsetSds * sd + tuning.offsetLeast);
  const middle = -Math.sin(angle) * look.awayX + Math.cos(angle) * look.awayY;
  layStrip(strip, window, angle, torso, aside + Math.abs(middle), sweep.mostLines, tuning);
  strip.priorMiddle = middle;
  strip.priorSd = sd * torso;
  // What runs through on both sides speaks against a still line; a moving one may be the rod out of the butt.
  strip.throughWeight = look.rodAlong ? 0 : tuning.throughWeight * look.still;
  sumStrip(strip, window);
  judgeStrip(strip, window, look.marks, look.still, tuning);
  takeBestLine(sweep, window, look.marks, direction, 1, tuning);
  takeBestLine(sweep, window, look.marks, direction + sweep.directions / 2, -1, tuning);
}
