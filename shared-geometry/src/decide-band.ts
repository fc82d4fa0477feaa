import { bandAt, bandIntervals } from "./band-interval.ts";
import type { BandDecision, BandId, BandLayout } from "./bands.ts";
import { normalBelow } from "./normal-probability.ts";

/** The odds under which a band is not claimed. */
export const usualOddsSetting = 0.8;

/** The odds of each band, from far to near, for a place that is normally distributed about `y`. They sum to 1. */
export function bandOdds(y: number, sd: number, layout: BandLayout): readonly { band: BandId; odds: number }[] {
  if (!Number.isFinite(y) || !(sd >= 0))
    throw new RangeError("bandOdds: needs a finite place and a spread of 0 or more");
  if (sd === 0) {
    const certain = bandAt(y, layout);
    return bandIntervals(layout).map(({ band }) => ({ band, odds: band === certain ? 1 : 0 }));
  }
  return bandIntervals(layout).map(({ band, from, to }) => ({
    band,
    odds: normalBelow((to - y) / sd) - normalBelow((from - y) / sd),
  }));
}

/**
 * The band of a place `y` (metres from the ball line towards the heels) that is known to one standard deviation `sd`.
 * Decided where the best band's odds reach the setting; else the two likeliest are named, likeliest first (the farther one on a tie).
 * @throws RangeError where y is not finite or sd is negative or not a number.
 */
export function decideBand(y: number, sd: number, layout: BandLayout, oddsSetting = usualOddsSetting): BandDecision {
  const ordered = bandOdds(y, sd, layout).toSorted((a, b) => b.odds - a.odds);
  const [best, second] = ordered;
  if (!best || !second) throw new RangeError("decideBand: a layout has at least two bands");
  return best.odds >= oddsSetting
    ? { decided: true, band: best.band, odds: best.odds }
    : { decided: false, candidates: [best.band, second.band], odds: [best.odds, second.odds] };
}
