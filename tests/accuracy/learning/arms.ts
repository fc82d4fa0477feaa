import { metres } from "@overcue/shared-geometry/units";
import type { Arm } from "./practise.ts";

const heelLine = 0.875;

/** What is compared. The fixed cues are set once after the baseline and locked. */
export const arms = {
  adaptive: { name: "adaptive, a person always says yes", cue: null, yes: () => true },
  careful: {
    name: "adaptive, yes only from 1.75 m beyond the ball to 1.3 m behind it",
    cue: null,
    yes: (felt) => felt >= -2 * heelLine && felt <= 1.5 * heelLine,
  },
  capped: { name: "adaptive, nobody says yes past the cap", cue: null, yes: () => false },
  none: { name: "no exaggeration", cue: () => 0, yes: () => false },
  fixedGain: { name: "fixed gain 2", cue: ({ change }) => metres(change ?? 0), yes: () => false },
  fixedBand: {
    name: "fixed band: the heel line, or as far beyond the ball",
    cue: ({ change }) => heelLine * Math.sign(change ?? 1),
    yes: () => false,
  },
} as const satisfies Record<string, Arm>;

export type ArmId = keyof typeof arms;
export const armIds = Object.keys(arms) as ArmId[];
