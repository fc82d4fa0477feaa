import { swingTuning } from "./swing-tuning.ts";

/** How long a club that passed the low may still need to the ball, by how long it was on its way down before, and to be seen coming up again after it, milliseconds. */
export const timeThroughBall = ({ wayDown }: { readonly wayDown: number }): number =>
  swingTuning.afterEnd + swingTuning.toBallShare * wayDown;
