import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * How far what is seen in a direction is more than another look at a still thing, 0 to 1. `fresh`: share of it that has come since the background was taken;
 * `anew`: what a look counts by the time since the last; `gone`: how far the hands are not where they were (`handsGone`). Hands that are where they were may hold
 * what was there all along; hands that have gone carry something that is new nearly everywhere.
 */
export function noveltyOf(fresh: number, anew: number, still: number, gone: number, tuning: ShaftTuning): number {
  const carried = Math.max(0, Math.min(1, (fresh - tuning.freshFrom) / (tuning.freshTo - tuning.freshFrom)));
  return (1 - still * (1 - anew) * (1 - fresh)) * (1 - gone * (1 - carried));
}

/** 0 to 1. `moved`: the hands' way from their mean place, torso lengths; `stayed`: share of the time that they were where they are: hands that go up and down pass their mean place. */
export const handsGone = (moved: number, stayed: number, { goneReach }: ShaftTuning): number =>
  1 - Math.min(Math.exp(-((moved / goneReach) ** 2)), stayed);
