import type { SeriesPoint } from "./fit-crossing.ts";

/**
 * Where a noisy quantity passes `level` for good: the index of the first of two neighbours on either side of it that leave the fewest
 * samples on the wrong side, the first such pair. `sign` 1: rising, -1: falling. Null where no pair within the span (both ends
 * closed, milliseconds) passes it that way.
 */
export function bestSplit(
  series: readonly SeriesPoint[],
  level: number,
  within: { readonly from: number; readonly to: number },
  sign: 1 | -1,
): number | null {
  const first = series.findIndex((point) => point.t >= within.from);
  const last = series.findLastIndex((point) => point.t <= within.to);
  if (first < 0) return null;
  const isPast = (index: number): boolean => sign * ((series[index]?.value ?? 0) - level) >= 0;
  let best: number | null = null;
  let score = 0;
  let least = Infinity;
  for (let index = first; index < last; index++) {
    score += isPast(index) ? 1 : -1;
    if (!isPast(index) && isPast(index + 1) && score < least) {
      least = score;
      best = index;
    }
  }
  return best;
}
