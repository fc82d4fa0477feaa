import { swingTuning } from "./swing-tuning.ts";

/** How long a club that passed the low at `passedLowAt` may still need to the ball, by how long it came down before, milliseconds. */
export function timeToBall(tops: readonly { readonly t: number }[], passedLowAt: number): number {
  const lastTop = tops[tops.length - 1];
  return lastTop === undefined ? 0 : swingTuning.toBallShare * (passedLowAt - lastTop.t);
}
