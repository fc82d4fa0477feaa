import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** How long the shaft looked when it was last tracked with its head, torso lengths, and how fast it turned, radians a second. */
export interface SeenLength {
  length: number;
  rate: number;
  t: Milliseconds | null;
}

/**
 * The longest that the shaft can look at `t`, torso lengths: it comes out of end-on about as fast as it turns in the picture, or as
 * the hands go (`handsSpeed`, torso lengths a second). Infinity where it was not tracked for a while.
 */
export function longestPlausible(
  { length, rate, t: seen }: SeenLength,
  t: Milliseconds,
  handsSpeed: number,
  tuning: ShaftTuning,
): number {
  const elapsed = seen === null ? Infinity : (t - seen) / 1000;
  if (elapsed > tuning.growMemory) return Infinity;
  return (
    length +
    tuning.growAtOnce +
    elapsed * (tuning.growSlow + tuning.growFast * Math.abs(rate) + tuning.growGoing * handsSpeed)
  );
}
