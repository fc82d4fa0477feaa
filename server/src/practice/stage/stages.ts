import type { PracticeState, StageId } from "@overcue/shared-geometry/wire/practice";

export type Feedback = PracticeState["feedback"];

/** One rung of the ladder, as data. */
export interface Stage {
  readonly id: StageId;
  readonly rod: boolean;
  /** How often the answer is told when the stage begins. */
  readonly feedback: Feedback;
  readonly next: StageId | null;
  readonly back: StageId | null;
  readonly how: string;
}

/** From slow rehearsals to the ball. */
export const stages: Readonly<Record<StageId, Stage>> = {
  "slow-rehearsal": {
    id: "slow-rehearsal",
    rod: true,
    feedback: "every-rep",
    next: "flow",
    back: null,
    how: "Slow rehearsals with the rod out of the butt end; no ball, no follow-through.",
  },
  flow: {
    id: "flow",
    rod: true,
    feedback: "every-rep",
    next: "added-speed",
    back: "slow-rehearsal",
    how: "Start with the club forward of the ball and let it flow back; rod still on, no ball.",
  },
  "added-speed": {
    id: "added-speed",
    rod: true,
    feedback: "every-second",
    next: "rod-off",
    back: "flow",
    how: "A little more speed each rep, rod still on; stop before the follow-through, no ball.",
  },
  "rod-off": {
    id: "rod-off",
    rod: false,
    feedback: "every-second",
    next: "ball",
    back: "added-speed",
    how: "Take the rod off; whole swings without a ball.",
  },
  ball: {
    id: "ball",
    rod: false,
    feedback: "summary-of-five",
    next: null,
    back: "rod-off",
    how: "With a ball, the rod off.",
  },
};

/** When a block passes and when it falls back, as data. Shares are carry-over. */
export interface StageRules {
  /** A rep counts as there from this carry-over up. */
  readonly passAt: number;
  /** So many reps of a block must be there, at every checkpoint that wants a change. */
  readonly passReps: number;
  /** A block whose carry-over, the mean of those checkpoints, is under this goes back a stage. */
  readonly fallBackUnder: number;
}

export const usualStageRules: StageRules = { passAt: 0.8, passReps: 4, fallBackUnder: 0.5 };

/** What coaches expect of a first lesson: common practice, no source. Shown, never enforced. */
export const expectation = {
  rehearsalsBeforeRodOff: 20,
  repsInAll: 60,
  sentence:
    "Common practice, no source: about 20 rehearsals before the rod comes off and 60 or more reps in all; 20 % at first, 50 % later, 80 % by the end of a two-hour lesson is a good result.",
};
