import { milliseconds, type Milliseconds } from "@overcue/shared-geometry/units";

/** A sampled quantity: `t` in milliseconds, rising; `value` and `sd` in one unit of its own. */
export interface SeriesPoint {
  readonly t: number;
  readonly value: number;
  readonly sd: number;
}

export interface Crossing {
  readonly t: Milliseconds;
  /** One standard deviation of `t` from the scatter and the stated errors of the samples, milliseconds. */
  readonly sd: number;
  /** Rate of the quantity there, units a millisecond. */
  readonly slope: number;
}

export interface FitOptions {
  /** Half-width of the window: at least `least` ms, and no further than a change of `change` units. */
  readonly least: number;
  readonly change: number;
  readonly sharedErrors: number;
}

/** Milliseconds from one sample to the next that a camera of 24 pictures a second leaves. */
const usualGap = 42;

interface Parabola {
  readonly at: number;
  readonly coefficients: readonly [number, number, number];
  readonly valueSd: number;
}

/**
 * The instant at which a sampled quantity passes `level`, between samples `from` and `from + 1` which lie on either side of it.
 * A parabola is fitted by weighted least squares to the samples about the crossing; null where the fit is flat there.
 */
export function fitCrossing(
  series: readonly SeriesPoint[],
  from: number,
  level: number,
  options: FitOptions,
): Crossing | null {
  const before = series[from];
  const after = series[from + 1];
  if (before === undefined || after === undefined || before.value === after.value) return null;
  const gap = after.t - before.t;
  const share = (level - before.value) / (after.value - before.value);
  const linear = before.t + Math.min(1, Math.max(0, share)) * gap;
  const parabola = fitParabola(windowAbout(series, linear, level, options), linear, options.sharedErrors);
  const straightSlope = (after.value - before.value) / gap;
  const scatter = Math.hypot(before.sd, after.sd) / Math.SQRT2 / Math.abs(straightSlope);
  // Across a gap of several pictures nobody knows how the quantity went.
  const unseen = Math.max(0, gap - usualGap) / 4;
  // The chord is off by no more than an eighth of the gap (a parabola's sagitta).
  const straight: Crossing = {
    t: milliseconds(linear),
    sd: Math.hypot(scatter, gap / 8, unseen),
    slope: straightSlope,
  };
  if (parabola === null) return straight;
  const [c, b, a] = parabola.coefficients;
  let offset = 0;
  for (let step = 0; step < 6; step++) {
    const slope = b + 2 * a * offset;
    if (Math.abs(slope) < 1e-9) return straight;
    offset -= (c + b * offset + a * offset * offset - level) / slope;
  }
  const slope = b + 2 * a * offset;
  const inside = linear + offset >= before.t - gap && linear + offset <= after.t + gap;
  if (!inside || slope * straightSlope <= 0) return straight;
  const sd = Math.hypot(parabola.valueSd / Math.abs(slope), unseen);
  // Few samples far apart bend the parabola at will.
  return sd <= straight.sd ? { t: milliseconds(linear + offset), sd, slope } : straight;
}

function windowAbout(series: readonly SeriesPoint[], t: number, level: number, options: FitOptions): SeriesPoint[] {
  const near = series.filter(
    (point) =>
      Math.abs(point.t - t) <= options.least ||
      (Math.abs(point.t - t) <= 6 * options.least && Math.abs(point.value - level) <= options.change),
  );
  if (near.length >= 4) return near;
  return [...series]
    .sort((p, q) => Math.abs(p.t - t) - Math.abs(q.t - t))
    .slice(0, 4)
    .sort((p, q) => p.t - q.t);
}

function fitParabola(points: readonly SeriesPoint[], at: number, sharedErrors: number): Parabola | null {
  if (points.length < 4) return null;
  const scale = Math.max(...points.map((point) => Math.abs(point.t - at)), 1);
  const sums = new Float64Array(5);
  const right = new Float64Array(3);
  for (const { t, value, sd } of points) {
    const x = (t - at) / scale;
    const weight = 1 / Math.max(sd, 1e-6) ** 2;
    let power = weight;
    for (let k = 0; k < 5; k++, power *= x) {
      sums[k] = (sums[k] ?? 0) + power;
      if (k < 3) right[k] = (right[k] ?? 0) + power * value;
    }
  }
  const inverse = invertSymmetric3(sums);
  if (inverse === null) return null;
  const solved = [0, 1, 2].map((row) => [0, 1, 2].reduce((sum, k) => sum + inverse(row, k) * (right[k] ?? 0), 0));
  const [c = 0, b = 0, a = 0] = solved;
  let misfit = 0;
  for (const { t, value, sd } of points) {
    const x = (t - at) / scale;
    misfit += ((value - c - b * x - a * x * x) / Math.max(sd, 1e-6)) ** 2;
  }
  const excess = Math.max(1, misfit / Math.max(1, points.length - 3));
  const valueSd = Math.sqrt(Math.max(0, inverse(0, 0)) * excess * sharedErrors);
  return { at, coefficients: [c, b / scale, a / (scale * scale)], valueSd };
}

/** Inverse of the 3 x 3 matrix of power sums (element i, j is sums[i + j]); null where it has none. */
function invertSymmetric3(sums: Float64Array): ((row: number, column: number) => number) | null {
  const m = (i: number, j: number): number => sums[i + j] ?? 0;
  const cofactor = (i: number, j: number): number => {
    const [r, s] = [0, 1, 2].filter((k) => k !== i) as [number, number];
    const [p, q] = [0, 1, 2].filter((k) => k !== j) as [number, number];
    return ((i + j) % 2 === 0 ? 1 : -1) * (m(r, p) * m(s, q) - m(r, q) * m(s, p));
  };
  const determinant = [0, 1, 2].reduce((sum, k) => sum + m(0, k) * cofactor(0, k), 0);
  if (!(Math.abs(determinant) > 1e-12)) return null;
  return (row, column) => cofactor(column, row) / determinant;
}
