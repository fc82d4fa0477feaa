import { swingTuning } from "./swing-tuning.ts";

/**
 * How long a club that passed the low at `passedLowAt` may still need to the ball, by how long it came down before, and to be seen coming up again after it,
 * milliseconds.
 */
export function timeThroughBall(tops: readonly { readonly t: number }[], passedLowAt: number): number {
  const lastTop = tops[tops.length - 1];
  return swingTuning.afterEnd + (lastTop === undefined ? 0 : swingTuning.toBallShare * (passedLowAt - lastTop.t));
}
