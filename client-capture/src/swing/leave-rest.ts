import { apart } from "./apart.ts";
import type { SeriesPoint } from "./fit-crossing.ts";
import { median } from "./median.ts";
import { pictureTuning } from "./picture-tuning.ts";
import { startOfGrowth, type StartOfGrowth } from "./start-of-growth.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Where something was, as lengths in metres that it may leave its rest by: right and down in a picture, or world axes, of the head and of the hands alike. */
export interface PlaceAt {
  readonly t: number;
  readonly at: readonly number[];
}

/** Milliseconds: first and last moment of a rest that is sure, and the top after it. */
export interface RestToTop {
  readonly from: number;
  readonly rest: number;
  readonly top: number;
}

export interface Leaving {
  /** When it set off. */
  readonly address: StartOfGrowth;
  /** When it could first be seen to have left. */
  readonly visible: StartOfGrowth;
}

/** Metres; `lingers`: the share of the time that is left to the top that going twice as far as `seen` takes at most. Default: no matter how long. */
export interface LeavingTuning {
  readonly seen: number;
  readonly most: number;
  readonly lingers?: number;
}

/**
 * When something left its resting place in the picture for good before the top: `seen` is how far it must have gone to be seen to have left, up to `most` more its
 * start is fitted; metres. Null where it was not seen at rest, or not while it left.
 */
export function leaveRest(
  places: readonly PlaceAt[],
  span: RestToTop,
  { seen, most, lingers = Infinity }: LeavingTuning,
): Leaving | null {
  const { setOff } = pictureTuning;
  const resting = places.filter(({ t }) => t >= span.from && t <= span.rest);
  if (resting.length < 4) return null;
  const at = middleOf(resting);
  const away = steadied(places.filter(({ t }) => t >= span.from && t <= span.top)).map((place): SeriesPoint => ({
    t: place.t,
    value: apart(place.at, at),
    sd: 0,
  }));
  const scatter = median(away.filter(({ t }) => t <= span.rest).map(({ value }) => value));
  const plain = Math.max(seen, setOff.scatters * scatter);
  const level = surest(away, plain, lingers, span.top);
  const lastInside = away.findLastIndex(({ value }) => value < level);
  const [before, after] = [away[lastInside], away[lastInside + 1]];
  if (before === undefined || after === undefined || after.t - before.t > setOff.longestGap) return null;
  // What it scatters by at rest lengthens every distance, the short ones most.
  const growing = away
    .slice(lastInside + 1)
    .map((one) => ({ ...one, value: Math.sqrt(Math.max(0, one.value ** 2 - scatter ** 2)) }));
  const end = growing.findIndex(({ value }) => value > most + level);
  const start = startOfGrowth(growing.slice(0, Math.max(3, end)));
  const t = before.t + ((after.t - before.t) * (level - before.value)) / (after.value - before.value);
  // Neither the fit nor the usual course of a reach alone tells it: the fit minds a head that is found at another length once it moves.
  const fitted = start === null ? null : { t: start.t, sd: Math.hypot(start.sd, setOff.seenShare * (span.top - t)) };
  const farthest = Math.max(...away.map(({ value }) => value));
  // The level is seen to a third of itself or so, and what takes long to grow by as much again is dated no better.
  const doubled = growing.find(({ value }) => value > 2 * level)?.t ?? span.top;
  const usual = usualStart(level / farthest, t, span.top);
  const both = together(fitted, { t: usual.t, sd: Math.hypot(usual.sd, (doubled - t) / 3) });
  const address = { t: Math.min(t, Math.max(span.rest, both.t)), sd: both.sd };
  // Who looks on sees it a little earlier or later than at this level, by as much as it takes to grow by some of it.
  const visibleT = address.t + (t - address.t) * (plain / level) ** (1 / swingTuning.setOff.power);
  const pace = (swingTuning.setOff.power * level) / Math.max(t - address.t, after.t - before.t);
  const creeping = setOff.visibleShare * (span.top - t);
  const visibleSd = Math.hypot((scatter + level / 3) / pace, (after.t - before.t) / 4, creeping);
  return { address, visible: { t: visibleT, sd: visibleSd } };
}

/** `level`, or twice as much where that was passed only long after: then a resting club was shifted, or an end of it found elsewhere. */
function surest(away: readonly SeriesPoint[], level: number, lingers: number, top: number): number {
  const leftAt = (distance: number): number => away[away.findLastIndex(({ value }) => value < distance)]?.t ?? top;
  const twice = leftAt(2 * level);
  return twice - leftAt(level) > lingers * (top - twice) ? 2 * level : level;
}

/** When a reach set off that had gone `share` of its way by `t` and ends at `top`, by minimum jerk (Flash and Hogan 1985, from memory: 10 x^3 at first). */
function usualStart(share: number, t: number, top: number): StartOfGrowth {
  const { alongSight, usualShare } = pictureTuning.setOff;
  const passed = Math.min(0.5, Math.cbrt((alongSight * share) / 10));
  const before = (passed / (1 - passed)) * (top - t);
  return { t: t - before, sd: usualShare * before };
}

/** Two answers to one question, each by its weight: as sure as the surer, for they share the picture's errors, and less where they disagree. */
function together(a: StartOfGrowth | null, b: StartOfGrowth): StartOfGrowth {
  if (a === null) return b;
  const weight = b.sd ** 2 / (a.sd ** 2 + b.sd ** 2);
  const apart = Math.abs(a.t - b.t) / Math.hypot(a.sd, b.sd);
  const sd = Math.min(a.sd, b.sd);
  return { t: b.t + weight * (a.t - b.t), sd: sd * Math.max(1, apart) };
}

/** Medians over a short time: the end of a thin line is found a few centimetres up or down it from picture to picture. */
export function steadied(places: readonly PlaceAt[]): PlaceAt[] {
  const half = pictureTuning.setOff.steadiedOver / 2;
  let first = 0;
  let last = -1;
  return places.map(({ t }) => {
    while ((places[first]?.t ?? t) < t - half) first++;
    while (last + 1 < places.length && (places[last + 1]?.t ?? t) <= t + half) last++;
    return { t, at: middleOf(places.slice(first, last + 1)) };
  });
}

export function middleOf(places: readonly PlaceAt[]): readonly number[] {
  return (places[0]?.at ?? []).map((_, axis) => median(places.map(({ at }) => at[axis] ?? 0)));
}

/** How far the places' middle moved from their first third to their last. */
export function driftOf(places: readonly PlaceAt[]): number {
  const third = Math.floor(places.length / 3);
  return apart(middleOf(places.slice(0, third)), middleOf(places.slice(-third)));
}
