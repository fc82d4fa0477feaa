import type { BandLayout } from "@overcue/shared-geometry/bands";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import type { CarryOver } from "../figures/carry-over.ts";
import { practiceSettings } from "../settings.ts";
import { inCentimetres, inPercent } from "../view/words.ts";
import type { Arrives } from "./arrives.ts";
import { roundCue } from "./round-cue.ts";
import { between } from "./start-cue.ts";

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
 * The next cue: where the golfer's own rate says that the whole of the wanted change would arrive, at most one step from here, never nearer than the
 * wanted place and never farther than a person can aim (`reach`). Up to the cap it moves by itself; from the cap on each step up asks for a yes. It rests where the
 * expected carry-over is already near the aim, or the move would be too small to see.
 */
export function proposeCue(question: CueQuestion): CueProposal {
  const { change, exaggerateBy, wantedPlace, layout } = question;
  const { step, capGain, roundWithin } = practiceSettings.cue;
  const gain = 1 + exaggerateBy / change;
  const placeAt = (anyGain: number): Metres => metres(wantedPlace + (anyGain - 1) * change);
  const wish = wishedGain(question, gain);
  const atCap = gain >= capGain - roundWithin;
  const needsYes = atCap && wish > gain;
  const ceiling = Math.max(gain, needsYes || wish < gain ? Infinity : capGain);
  const next = Math.min(gain + step, ceiling, Math.max(gain - step, wish));
  if (Math.abs((next - gain) * change) < layout.tolerance / 2)
    return { exaggerateBy, needsYes: false, reason: `${evidence(question)}: the cue stays.` };
  // Rounding may shorten the move but not undo it: at least half of it remains, and it never grows past the step, the cap or the wanted place.
  const farthest = next > gain ? Math.min(gain + step, ceiling) : Math.max(gain - step, 1);
  const allowed = between(placeAt((gain + next) / 2), placeAt(farthest));
  const within = Math.max(layout.tolerance, roundWithin * Math.abs(change));
  const moved = metres(roundCue(placeAt(next), layout, within, allowed) - wantedPlace);
  return { exaggerateBy: moved, needsYes, reason: moveReason(question, moved, needsYes) };
}

/** The felt change, as a multiple of the wanted one, at which this golfer would arrive. */
function wishedGain(question: CueQuestion, gain: number): number {
  const { arrives, carryOver, fellBack } = question;
  const { aimAt, overshoot, overshootSds, restWithin, step, leastArrives } = practiceSettings.cue;
  // Where the block's own error is large, less than the whole is aimed at, so that an overshoot stays unlikely.
  const aim = Math.min(aimAt, overshoot - overshootSds * carryOver.sd);
  const expected = arrives.mean * gain;
  const isNear = Math.abs(expected - aim) <= restWithin && Math.abs(carryOver.value - aim) <= restWithin;
  const aimed = isNear ? gain : aim / Math.max(arrives.mean, leastArrives);
  const wish = Math.max(1, fellBack ? Math.max(aimed, gain + step) : aimed);
  return wish > gain ? Math.max(gain, Math.min(wish, reachableGain(question))) : wish;
}

/** The multiple at which the felt place lies as far out as it could still be read. */
function reachableGain({ change, wantedPlace, layout }: CueQuestion): number {
  const farthest = Math.sign(change) * practiceSettings.cue.reach * layout.heelLine;
  return 1 + (farthest - wantedPlace) / change;
}

function evidence({ carryOver, arrives }: CueQuestion): string {
  const per = metres(arrives.mean * 0.1);
  return `${inPercent(carryOver.value)} of the wanted change arrived; each 10 cm of cue brings about ${inCentimetres(per)} (give or take ${inCentimetres(metres(arrives.sd * 0.1))})`;
}

function moveReason(question: CueQuestion, moved: Metres, needsYes: boolean): string {
  const isUp = Math.sign(moved - question.exaggerateBy) === Math.sign(question.change);
  const by = inCentimetres(metres(moved - question.exaggerateBy));
  if (needsYes) return `${evidence(question)}: ${by} more would go past the cap and asks for your yes.`;
  return `${evidence(question)}: the cue goes ${isUp ? "up" : "down"} by ${by}.`;
}
