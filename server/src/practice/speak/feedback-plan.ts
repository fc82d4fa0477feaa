import type { Feedback } from "../stage/stages.ts";

/** Which reps of a block are answered, as data: positions count from 1. A summary answers with the medians of the block instead of with the rep. */
export interface FeedbackPlan {
  readonly answered: readonly number[];
  readonly summary: boolean;
}

/** Every plan leaves silent reps in every block of five. */
export const feedbackPlans: Readonly<Record<Feedback, FeedbackPlan>> = {
  "every-rep": { answered: [1, 2, 3, 5], summary: false },
  "every-second": { answered: [2, 4], summary: false },
  "summary-of-five": { answered: [5], summary: true },
  silent: { answered: [], summary: false },
};

/** Whether the rep at this position of its block (from 1) is answered. */
export const isAnswered = (feedback: Feedback, position: number): boolean =>
  feedbackPlans[feedback].answered.includes(position);
