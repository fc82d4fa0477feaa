import type { RepReading } from "@overcue/client-capture/pipeline/rep-readings";
import type { TrueRep } from "./true-reps.ts";

export interface MatchedReps {
  readonly pairs: readonly { readonly truth: TrueRep; readonly reading: RepReading }[];
  readonly missed: readonly TrueRep[];
  /** Reported where there was none, or a second time. */
  readonly invented: readonly RepReading[];
}

/** A reported rep is a true one when the two spans share at least half of the shorter; each true rep is used once, the best shared first. */
export function matchReps(truths: readonly TrueRep[], readings: readonly RepReading[]): MatchedReps {
  const candidates = truths
    .flatMap((truth) => readings.map((reading) => ({ truth, reading, shared: shareOf(truth, reading) })))
    .filter(({ shared }) => shared >= 0.5)
    .sort((a, b) => b.shared - a.shared);
  const pairs: { truth: TrueRep; reading: RepReading }[] = [];
  for (const { truth, reading } of candidates) {
    if (pairs.some((pair) => pair.truth === truth || pair.reading === reading)) continue;
    pairs.push({ truth, reading });
  }
  return {
    pairs,
    missed: truths.filter((truth) => !pairs.some((pair) => pair.truth === truth)),
    invented: readings.filter((reading) => !pairs.some((pair) => pair.reading === reading)),
  };
}

function shareOf({ from, to }: TrueRep, { startedAt, endedAt }: RepReading): number {
  const shared = Math.min(to, endedAt) - Math.max(from, startedAt);
  return shared / Math.max(1, Math.min(to - from, endedAt - startedAt));
}
