/**
 * A piece of something long in the picture, from end a to end b, as it moves while the picture is read out row by row:
 * each end's place at the moments at which the top row, the middle row and the bottom row are read.
 * Where the read-out is instant the three are the same.
 */
export interface Sweep {
  readonly ax: readonly [number, number, number];
  readonly ay: readonly [number, number, number];
  readonly bx: readonly [number, number, number];
  readonly by: readonly [number, number, number];
  /** Half-widths in pixels and distances in metres at the two ends. */
  readonly radiusA: number;
  readonly radiusB: number;
  readonly depthA: number;
  readonly depthB: number;
}

/** The ends at one row: ax, ay, bx, by. */
export type Ends = Float64Array;

/** Weights of the three moments for the row whose middle is at y (the parabola through them). */
export function rowWeights(y: number, height: number, weights: Float64Array): void {
  const share = y / height;
  weights[0] = (1 - share) * (1 - 2 * share);
  weights[1] = 4 * share * (1 - share);
  weights[2] = share * (2 * share - 1);
}

export function endsAtRow(sweep: Sweep, weights: Float64Array, ends: Ends): void {
  const top = weights[0] ?? 0;
  const middle = weights[1] ?? 0;
  const bottom = weights[2] ?? 0;
  ends[0] = sweep.ax[0] * top + sweep.ax[1] * middle + sweep.ax[2] * bottom;
  ends[1] = sweep.ay[0] * top + sweep.ay[1] * middle + sweep.ay[2] * bottom;
  ends[2] = sweep.bx[0] * top + sweep.bx[1] * middle + sweep.bx[2] * bottom;
  ends[3] = sweep.by[0] * top + sweep.by[1] * middle + sweep.by[2] * bottom;
}

/** First and last row that the piece can touch, `margin` pixels spare. */
export function rowsOf(sweep: Sweep, margin: number): readonly [number, number] {
  const reach = Math.max(sweep.radiusA, sweep.radiusB) + margin;
  return [
    Math.floor(Math.min(...sweep.ay, ...sweep.by) - reach),
    Math.ceil(Math.max(...sweep.ay, ...sweep.by) + reach),
  ];
}

/** First and last column at the row y that a piece with these ends can touch. */
export function columnsAtRow(ends: Ends, y: number, reach: number, span: Float64Array): void {
  const ax = ends[0] ?? 0;
  const ay = ends[1] ?? 0;
  const bx = ends[2] ?? 0;
  const by = ends[3] ?? 0;
  let low = Math.min(ax, bx) - reach;
  let high = Math.max(ax, bx) + reach;
  const rise = by - ay;
  if (Math.abs(rise) > 1e-3) {
    const run = (bx - ax) / rise;
    const centre = ax + (y - ay) * run;
    const half = reach * Math.sqrt(1 + run * run);
    low = Math.max(low, centre - half);
    high = Math.min(high, centre + half);
  }
  span[0] = low;
  span[1] = high;
}
