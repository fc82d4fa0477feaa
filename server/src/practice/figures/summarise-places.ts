import { metres, type Metres } from "@overcue/shared-geometry/units";
import { weightedMedian } from "./weighted-median.ts";

/** What a handful of reps says about one checkpoint. */
export interface PlaceSummary {
  readonly median: Metres;
  /** How far single reps lie from the median: 1.4826 times the weighted median distance, which is one standard deviation of normal scatter. */
  readonly spread: Metres;
  /** One standard deviation of the median itself. */
  readonly sd: Metres;
  readonly reps: number;
}

/** A normal sample's median scatters this much more than its mean (square root of half of pi). */
const medianOverMean = Math.sqrt(Math.PI / 2);

/**
 * Median, spread and standard error of places, each weighted by its own standard deviation: a reading that may be 20 cm off moves the median
 * less than one that is good to 2 cm. `floor` (metres) keeps one very certain reading from deciding alone. Null for no places.
 */
export function summarisePlaces(
  places: readonly { readonly y: Metres; readonly sd: Metres }[],
  floor: Metres,
): PlaceSummary | null {
  const weigh = (sd: number): number => 1 / (sd * sd + floor * floor);
  const median = weightedMedian(places.map(({ y, sd }) => ({ value: y, weight: weigh(sd) })));
  if (median === null) return null;
  const distance = weightedMedian(places.map(({ y, sd }) => ({ value: Math.abs(y - median), weight: weigh(sd) }))) ?? 0;
  const spread = 1.4826 * distance;
  const weights = places.map(({ sd }) => weigh(sd));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const effective = (sum * sum) / weights.reduce((total, weight) => total + weight * weight, 0);
  const measured = Math.sqrt(places.length / sum);
  const single = Math.max(spread, measured);
  return {
    median: metres(median),
    spread: metres(spread),
    sd: metres((medianOverMean * single) / Math.sqrt(effective)),
    reps: places.length,
  };
}
