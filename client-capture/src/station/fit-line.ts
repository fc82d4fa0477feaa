/** A straight line in the picture: a place on it, its unit direction, and how well both are known. */
export interface FittedLine {
  readonly x: number;
  readonly y: number;
  readonly direction: { readonly x: number; readonly y: number };
  /** One sd of a single place across the line. */
  readonly scatter: number;
  /** One sd across the line at a distance along it from (x, y). */
  readonly acrossSdAt: (along: number) => number;
  readonly used: readonly boolean[];
}

/**
 * The line through places in the picture, squares of the distances across it least (total least squares), places beyond `robustBeyond` sds left out, over
 * again until it settles. Null for fewer than three places or places all in one spot.
 */
export function fitLine(
  places: readonly { readonly x: number; readonly y: number }[],
  robustBeyond: number,
): FittedLine | null {
  let used = places.map(() => true);
  let line: FittedLine | null = null;
  for (let round = 0; round < 12; round++) {
    const chosen = places.filter((_, index) => used[index]);
    if (chosen.length < 3) return null;
    const x = mean(chosen.map((place) => place.x));
    const y = mean(chosen.map((place) => place.y));
    const xx = mean(chosen.map((place) => (place.x - x) ** 2));
    const yy = mean(chosen.map((place) => (place.y - y) ** 2));
    const xy = mean(chosen.map((place) => (place.x - x) * (place.y - y)));
    if (!(xx + yy > 1e-9)) return null;
    const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
    const direction = { x: Math.cos(angle), y: Math.sin(angle) };
    const off = (place: { x: number; y: number }): number => (place.y - y) * direction.x - (place.x - x) * direction.y;
    // The middle of the distances holds out against up to half of strangers.
    const sizes = places.map((place) => Math.abs(off(place)));
    const middle = sizes.toSorted((a, b) => a - b)[Math.floor(sizes.length / 2)] ?? 0;
    const limit = robustBeyond * Math.max(1.4826 * middle, 0.08);
    const next = sizes.map((size) => size <= limit);
    const kept = places.filter((_, index) => next[index]);
    const scatter = Math.sqrt(mean(kept.map((place) => off(place) ** 2)));
    const spread = Math.sqrt(Math.max(xx, yy));
    const count = chosen.length;
    line = {
      x,
      y,
      direction,
      scatter,
      used: next,
      acrossSdAt: (along) => (scatter / Math.sqrt(count)) * Math.sqrt(1 + (along / spread) ** 2),
    };
    const settled = next.every((value, index) => value === used[index]);
    used = next;
    if (settled) break;
  }
  return line;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
