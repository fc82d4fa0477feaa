import type { BandLayout } from "@overcue/shared-geometry/bands";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import type { CarryOver } from "../figures/carry-over.ts";
import { practiceSettings } from "../settings.ts";
import { inCentimetres, inPercent } from "../view/words.ts";
import type { Arrives } from "./arrives.ts";
import { roundCue } from "./round-cue.ts";
import { between, capOf } from "./start-cue.ts";

/** Where the cue should stand for the next block, and why. `needsYes`: past the cap, so a person must say yes. */
export interface CueProposal {
  readonly exaggerateBy: Metres;
  readonly needsYes: boolean;
  readonly reason: string;
}

export interface CueQuestion {
  /** From baseline to wanted, metres, signed, not 0. */
  readonly change: Metres;
  /** The middle of what is wanted. */
  readonly wantedPlace: Metres;
  /** Where the cue stood in the block. */
  readonly exaggerateBy: Metres;
  readonly arrives: Arrives;
  readonly carryOver: CarryOver;
  readonly layout: BandLayout;
  /** A fallen-back stage wants the cue up by a step, whatever the estimate says. */
  readonly fellBack: boolean;
}

/**
 * The next cue: where the golfer's own rate says that the whole of the wanted change would arrive, at most one step from here, never
 * nearer than the wanted place itself. It rests where the expected carry-over is already near the aim. Moves in metres; all thresholds are shares of the wanted change.
 */
export function proposeCue(question: CueQuestion): CueProposal {
  const { change, exaggerateBy, wantedPlace, layout } = question;
  const { step, roundWithin } = practiceSettings.cue;
  const gain = 1 + exaggerateBy / change;
  const wish = wishedGain(question, gain);
  const next = Math.max(1, Math.min(gain + step, Math.max(gain - step, wish)));
  if (Math.abs(next - gain) < 1e-9) return { exaggerateBy, needsYes: false, reason: restReason(question) };
  const towards = Math.sign(next - gain);
  const farthest = metres((gain + towards * step - 1) * change);
  const cap = capOf(change);
  const pastCap = next > practiceSettings.cue.capGain && towards > 0;
  const limit = pastCap || towards < 0 ? farthest : nearer(farthest, cap);
  // Rounding may shorten the move but not undo it: at least half of it remains.
  const least = metres(exaggerateBy + ((next - gain) * change) / 2);
  const within = Math.max(layout.tolerance, roundWithin * Math.abs(change));
  const allowed = between(metres(wantedPlace + least), metres(wantedPlace + notBelowWanted(limit, change)));
  const felt = roundCue(metres(wantedPlace + (next - 1) * change), layout, within, allowed);
  const moved = metres(felt - wantedPlace);
  return { exaggerateBy: moved, needsYes: pastCap, reason: moveReason(question, moved) };
}

function wishedGain({ arrives, carryOver, fellBack }: CueQuestion, gain: number): number {
  const { aimAt, restWithin, step } = practiceSettings.cue;
  const expected = arrives.mean * gain;
  const rested = Math.abs(expected - aimAt) <= restWithin && Math.abs(carryOver.value - aimAt) <= restWithin;
  const wish = rested ? gain : aimAt / Math.max(arrives.mean, 0.05);
  return fellBack ? Math.max(wish, gain + step) : wish;
}

/** Of two signed exaggerations on the same side, the smaller. */
function nearer(a: Metres, b: Metres): Metres {
  return Math.abs(a) <= Math.abs(b) ? a : b;
}

function notBelowWanted(exaggerateBy: Metres, change: Metres): Metres {
  return Math.sign(exaggerateBy) === Math.sign(change) ? exaggerateBy : metres(0);
}

function evidence({ carryOver, arrives }: CueQuestion): string {
  const per = metres(arrives.mean * 0.1);
  return `${inPercent(carryOver.value)} of the wanted change arrived; each 10 cm of cue brings about ${inCentimetres(per)} (give or take ${inCentimetres(metres(arrives.sd * 0.1))})`;
}

function restReason(question: CueQuestion): string {
  return `${evidence(question)}: the cue stays.`;
}

function moveReason(question: CueQuestion, moved: Metres): string {
  const up = Math.abs(moved) > Math.abs(question.exaggerateBy);
  const by = inCentimetres(metres(moved - question.exaggerateBy));
  return `${evidence(question)}: the cue goes ${up ? "up" : "down"} by ${by}.`;
}
