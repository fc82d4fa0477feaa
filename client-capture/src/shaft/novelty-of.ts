import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * How far what is seen in a direction is more than another look at a still thing, 0 to 1. `fresh`: share of it that has come since the background was taken;
 * `anew`: what a look counts by the time since the last; `moved`: the hands' way from where they were, torso lengths. Hands that are where they were may hold
 * what was there all along; hands that have gone carry something that is new nearly everywhere.
 */
export function noveltyOf(fresh: number, anew: number, still: number, moved: number, tuning: ShaftTuning): number {
  const gone = 1 - Math.exp(-((moved / tuning.goneReach) ** 2));
  const carried = Math.max(0, Math.min(1, (fresh - tuning.freshFrom) / (tuning.freshTo - tuning.freshFrom)));
  return (1 - still * (1 - anew) * (1 - fresh)) * (1 - gone * (1 - carried));
}
