/** A moment at which something was measured, milliseconds. */
export interface Moment {
  readonly t: number;
}

/** Weights of four moments in a row, for an instant between the middle two; they sum to 1. */
export type MomentWeights = readonly [number, number, number, number];

/**
 * How much four moments in a row count at an instant between the middle two: the cubic through both of these with the slopes of the chords about them (Catmull and Rom 1974, from memory; uneven spacing). What turns or
 * gathers speed lies off the straight line between two poses by a few centimetres, always to the same side. Where the first or the last moment is missing, the chord of the other two takes its slope's place.
 */
export function weightsBetween(
  t: number,
  moments: readonly [Moment | undefined, Moment, Moment, Moment | undefined],
): MomentWeights {
  const [first, before, after, last] = moments;
  const step = after.t - before.t;
  const x = (t - before.t) / step;
  const atBefore = (1 + 2 * x) * (1 - x) ** 2;
  const atAfter = x ** 2 * (3 - 2 * x);
  const slopeBefore = x * (1 - x) ** 2;
  const slopeAfter = x ** 2 * (x - 1);
  // A slope counts from the moment before to the moment after the one that it belongs to.
  const early = (slopeBefore * step) / (after.t - (first ?? before).t);
  const late = (slopeAfter * step) / ((last ?? after).t - before.t);
  const [noFirst, noLast] = [first === undefined, last === undefined];
  return [
    noFirst ? 0 : -early,
    atBefore - late - (noFirst ? early : 0),
    atAfter + early + (noLast ? late : 0),
    noLast ? 0 : late,
  ];
}

/** The four moments about an instant between two of them: those before and after it, and their neighbours. Null where it lies before the first or after the last. */
export function momentsAbout<Each extends Moment>(
  moments: readonly Each[],
  next: number,
): readonly [Each | undefined, Each, Each, Each | undefined] | null {
  const [before, after] = [moments[next - 1], moments[next]];
  return before === undefined || after === undefined ? null : [moments[next - 2], before, after, moments[next + 1]];
}

/** Index of the first moment at or after `t`, given that of an earlier `t`; the number of moments where there is none. */
export function nextMoment(moments: readonly Moment[], from: number, t: number): number {
  let next = from;
  while (next < moments.length && (moments[next]?.t ?? 0) < t) next++;
  return next;
}
