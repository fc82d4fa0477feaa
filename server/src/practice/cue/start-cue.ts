import type { BandLayout } from "@overcue/shared-geometry/bands";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import { middleOf, type GroundStretch } from "../drill/resolve-stretch.ts";
import { wantedChange } from "../figures/carry-over.ts";
import { practiceSettings } from "../settings.ts";
import { inCentimetres } from "../view/words.ts";
import { roundCue } from "./round-cue.ts";

/** Where the cue stands: felt minus wanted (metres along y, signed), who put it there and why. */
export interface Cue {
  readonly exaggerateBy: Metres;
  readonly setBy: "drill" | "start" | "adaptive" | "person";
  readonly reason: string;
}

/** Where the drill does not exaggerate: what is wanted is what is to be felt. */
export function plainCue(reason: string): Cue {
  return { exaggerateBy: metres(0), setBy: "start", reason };
}

/** The cue before a baseline: the drill's usual one. */
export function drillCue(wanted: GroundStretch, usual: GroundStretch): Cue {
  return {
    exaggerateBy: metres(middleOf(usual) - middleOf(wanted)),
    setBy: "drill",
    reason: "The drill's usual cue: your own baseline is not known yet.",
  };
}

/**
 * The first cue after a baseline: the felt change is `startGain` times the wanted one, drawn onto a stick or band that is near, never past the cap. Where the
 * baseline already lies in what is wanted nothing is exaggerated.
 */
export function startCue(baseline: Metres, wanted: GroundStretch, layout: BandLayout): Cue {
  const change = wantedChange(baseline, wanted);
  if (change === 0) return plainCue("Your baseline is already where it is wanted: nothing to exaggerate.");
  const { startGain, capGain, roundWithin } = practiceSettings.cue;
  const place = metres(baseline + startGain * change);
  const within = Math.max(layout.tolerance, roundWithin * Math.abs(change));
  const felt = roundCue(place, layout, within, between(middleOf(wanted), metres(baseline + capGain * change)));
  return {
    exaggerateBy: metres(felt - middleOf(wanted)),
    setBy: "start",
    reason: `Wanted is ${inCentimetres(change)} from your baseline, so about ${startGain} times that is to be felt at first.`,
  };
}

/** The stretch between two places, whichever is the farther. */
export function between(a: Metres, b: Metres): GroundStretch {
  return a <= b ? { from: a, to: b } : { from: b, to: a };
}

/** The farthest that felt may lie from wanted without a person's yes, metres along y, signed. */
export function capOf(change: Metres): Metres {
  return metres((practiceSettings.cue.capGain - 1) * change);
}
