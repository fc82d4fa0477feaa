import type { BandLayout } from "@overcue/shared-geometry/bands";
import { normalBelow } from "@overcue/shared-geometry/normal-probability";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { PlaceCheckpoint } from "../drill/drill-schema.ts";
import { summarisePlaces, type PlaceSummary } from "../figures/summarise-places.ts";
import type { CountedRep } from "../journal/state.ts";
import { practiceSettings } from "../settings.ts";

export type Pattern = PracticeState["pattern"];
type Named = Exclude<Pattern["name"], "not-enough-data">;

/**
 * The golfer's pattern with its odds, from where the butt points at lead arm level going back and coming down. A steeper shaft points nearer the heels,
 * so down minus back is positive for flat-to-steep. Within the tolerance it is `even`. Both places on the same outer side (behind the toe line, or beyond the ball line)
 * or reps that disagree with each other are `mixed`. No norm is meant by any of these names.
 */
export function namePattern(reps: readonly CountedRep[], layout: BandLayout): Pattern {
  const both = reps.flatMap((rep) => {
    const back = placeAt(rep, "arm-level-back");
    const down = placeAt(rep, "arm-level-down");
    return back && down ? [{ back, down }] : [];
  });
  const floor = metres(layout.tolerance / 2);
  const back = summarisePlaces(
    both.map((rep) => rep.back),
    floor,
  );
  const down = summarisePlaces(
    both.map((rep) => rep.down),
    floor,
  );
  if (!back || !down || both.length < practiceSettings.pattern.fewest) return { name: "not-enough-data", odds: 1 };
  const typical = oddsOf(back, down, layout);
  const disagree = disagreement(both, layout);
  const odds: Record<Named, number> = {
    "flat-to-steep": typical["flat-to-steep"] * (1 - disagree),
    "steep-to-flat": typical["steep-to-flat"] * (1 - disagree),
    even: typical.even * (1 - disagree),
    mixed: typical.mixed * (1 - disagree) + disagree,
  };
  const [name, best] = (Object.entries(odds) as [Named, number][]).reduce((a, b) => (b[1] > a[1] ? b : a));
  return { name, odds: Math.min(1, best) };
}

interface Reading {
  readonly y: Metres;
  readonly sd: Metres;
}

const placeAt = (rep: CountedRep, checkpoint: PlaceCheckpoint): Reading | undefined =>
  rep.places.find((place) => place.checkpoint === checkpoint);

const evenWithin = (layout: BandLayout): number => practiceSettings.pattern.evenWithinTolerances * layout.tolerance;

/** Cuts the normal belief about the place going back into slices of equal odds, and asks each slice about the place coming down. */
function oddsOf(back: PlaceSummary, down: PlaceSummary, layout: BandLayout): Record<Named, number> {
  const odds: Record<Named, number> = { "flat-to-steep": 0, "steep-to-flat": 0, even: 0, mixed: 0 };
  const below = (y: number): number => normalBelow((y - down.median) / down.sd);
  const within = evenWithin(layout);
  const beyondBall = 0 - layout.tolerance;
  for (const z of slices) {
    const y = back.median + z * back.sd;
    const weight = 1 / slices.length;
    const steeper = 1 - below(y + within);
    const flatter = below(y - within);
    odds.even += weight * (1 - steeper - flatter);
    // Steeper still than a steep way back, flatter still than a flat one: the change is there, the named start is not.
    const steepStart = y > layout.toeLine;
    const steepEnd = y > layout.toeLine ? between(below, layout.toeLine, y - within) : 0;
    const flatStart = y < beyondBall;
    const flatEnd = flatStart ? between(below, y + within, beyondBall) : 0;
    odds["flat-to-steep"] += weight * (steepStart ? 0 : steeper - flatEnd);
    odds["steep-to-flat"] += weight * (flatStart ? 0 : flatter - steepEnd);
    odds.mixed += weight * ((steepStart ? steeper : flatEnd) + (flatStart ? flatter : steepEnd));
  }
  return odds;
}

const between = (below: (y: number) => number, from: number, to: number): number =>
  to > from ? below(to) - below(from) : 0;

/** Middles of 40 slices of a standard normal distribution with equal odds, by bisection. */
const slices: readonly number[] = Array.from({ length: 40 }, (_, index) => quantile((index + 0.5) / 40));

function quantile(odds: number): number {
  let low = -8;
  let high = 8;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < odds) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Twice the share of reps on the rarer side of even: 0 where all agree, 1 where half do one thing and half the reverse. Each rep counts by its odds. */
function disagreement(both: readonly { back: Reading; down: Reading }[], layout: BandLayout): number {
  const within = evenWithin(layout);
  let steeper = 0;
  let flatter = 0;
  for (const { back, down } of both) {
    const sd = Math.max(Math.hypot(back.sd, down.sd), Number.MIN_VALUE);
    const difference = down.y - back.y;
    steeper += 1 - normalBelow((within - difference) / sd);
    flatter += normalBelow((-within - difference) / sd);
  }
  return Math.min(1, (2 * Math.min(steeper, flatter)) / both.length);
}
