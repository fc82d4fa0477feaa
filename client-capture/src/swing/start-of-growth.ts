import { swingTuning } from "./swing-tuning.ts";

/** How far something is from where it rested: milliseconds, and a length or angle over 0. */
export interface Grown {
  readonly t: number;
  readonly value: number;
}

/** Milliseconds, with one standard deviation. */
export interface StartOfGrowth {
  readonly t: number;
  readonly sd: number;
}

/**
 * When a reach began, from samples after it. A reach starts from rest with no speed and no acceleration, so that its path grows with a power of the time
 * (minimum jerk: Flash and Hogan 1985, from memory; the third at first, 2.75 on average over its first tenth); the root of that power is a
 * straight line, and its foot is the start. The error holds the scatter about that line, and that nobody says which power this golfer's start
 * grows by. Null for fewer than three samples, or where nothing grows.
 */
export function startOfGrowth(samples: readonly Grown[]): StartOfGrowth | null {
  const { power, otherPowers } = swingTuning.setOff;
  const foot = footOfPower(samples, power);
  if (foot === null) return null;
  const others = otherPowers.map((other) => Math.abs((footOfPower(samples, other)?.t ?? foot.t) - foot.t));
  return { t: foot.t, sd: Math.hypot(foot.sd, ...others.map((off) => off / Math.SQRT2)) };
}

function footOfPower(samples: readonly Grown[], power: number): StartOfGrowth | null {
  const first = samples[0];
  if (first === undefined || samples.length < 3) return null;
  const count = samples.length;
  const roots = samples.map(({ t, value }) => ({ t: t - first.t, root: Math.max(0, value) ** (1 / power) }));
  const meanT = roots.reduce((sum, { t }) => sum + t, 0) / count;
  const meanRoot = roots.reduce((sum, { root }) => sum + root, 0) / count;
  const together = roots.reduce((sum, { t, root }) => sum + (t - meanT) * (root - meanRoot), 0);
  const alone = roots.reduce((sum, { t }) => sum + (t - meanT) ** 2, 0);
  if (!(together > 0)) return null;
  const slope = together / alone;
  const back = meanRoot / slope;
  const scatter = roots.reduce((sum, { t, root }) => sum + (root - meanRoot - slope * (t - meanT)) ** 2, 0);
  const variance = (scatter / (count - 2)) * (1 / count + back ** 2 / alone) * swingTuning.sharedErrors;
  return { t: first.t + meanT - back, sd: Math.sqrt(variance) / slope };
}
