import type { ArmFigures } from "./compare-arms.ts";

export interface Goal {
  readonly what: string;
  readonly goal: string;
  readonly figure: number;
  readonly met: boolean;
}

/** What the adaptive cue is meant to do, beside what it did. */
export function goalsOf(figures: readonly ArmFigures[]): readonly Goal[] {
  const adaptive = figures.find(({ arm }) => arm === "adaptive");
  if (!adaptive) throw new Error("there is an adaptive arm");
  const { reached, fasterThanFixedGain, overshot } = adaptive;
  return [
    { what: "reaches 80 % carry-over within 12 blocks", goal: ">= 90 %", figure: reached, met: reached >= 0.9 },
    {
      what: "in fewer blocks than fixed gain 2",
      goal: ">= 60 %",
      figure: fasterThanFixedGain,
      met: fasterThanFixedGain >= 0.6,
    },
    { what: "overshoots (over 150 % in any block)", goal: "<= 3 %", figure: overshot, met: overshot <= 0.03 },
  ];
}
