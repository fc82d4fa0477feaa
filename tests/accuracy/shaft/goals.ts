import type { RowName } from "./rows.ts";
import type { Figures } from "./figures.ts";

/** One bound on one figure. */
export interface Goal {
  readonly figure: keyof Figures;
  readonly atLeast?: number;
  readonly atMost?: number;
}

const everyRow: readonly Goal[] = [
  { figure: "coverage", atLeast: 0.9, atMost: 0.98 },
  { figure: "confidentWrong", atMost: 0.005 },
];

const slowWithRod: readonly Goal[] = [
  { figure: "within2", atLeast: 0.99 },
  { figure: "trackedShare", atLeast: 0.98 },
  { figure: "medianDegrees", atMost: 0.5 },
];

const ownGoals: Readonly<Partial<Record<RowName, readonly Goal[]>>> = {
  "slow+rod": slowWithRod,
  "rod tapped": slowWithRod,
  "slow+bare": [
    { figure: "within3", atLeast: 0.97 },
    { figure: "medianDegrees", atMost: 0.5 },
  ],
  "full 60 1/500": [
    { figure: "within5", atLeast: 0.92 },
    { figure: "trackedShare", atLeast: 0.8 },
  ],
  "empty hands": [
    { figure: "lost", atLeast: 0.97 },
    { figure: "confidentWrong", atMost: 0.005 },
  ],
};

/** The goals of a row; they hold for each of the tracker's answers. */
export function goalsOf(name: RowName): readonly Goal[] {
  const own = ownGoals[name] ?? [];
  return name === "empty hands" ? own : [...own, ...everyRow];
}

/** Whether a figure keeps to its goal; a figure that could not be taken does not. */
export function isMet(goal: Goal, figures: Figures): boolean {
  const value = figures[goal.figure];
  if (value === null) return false;
  return value >= (goal.atLeast ?? -Infinity) && value <= (goal.atMost ?? Infinity);
}
