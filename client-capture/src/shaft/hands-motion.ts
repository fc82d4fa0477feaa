/**
 * Where the hands are in the picture, how fast they go and how far off the poses have them, pixels and seconds, with the errors of all that: a Kalman filter
 * over a point whose speed wanders (white noise of acceleration), seen by one that errs alike from look to look. Changed in place.
 */
export interface HandsMotion {
  /** x, y, their speeds, and what a pose adds to x and y. */
  readonly state: Float64Array;
  /** 6 * 6, row-major, in the order of `state`. */
  readonly covariance: Float64Array;
}

const size = 6;

export const startHandsMotion = (): HandsMotion => ({
  state: new Float64Array(size),
  covariance: new Float64Array(size * size),
});

/** At rest, by a first pose at (x, y); standard deviations in pixels (what all poses share, what is this one's own) and pixels a second. */
export function restHandsAt(
  { state, covariance }: HandsMotion,
  x: number,
  y: number,
  poseSd: number,
  jitter: number,
  speedSd: number,
): void {
  state.fill(0);
  state[0] = x;
  state[1] = y;
  covariance.fill(0);
  const common = poseSd * poseSd;
  for (let i = 0; i < 2; i++) {
    covariance[at(i, i)] = common + jitter * jitter;
    covariance[at(i + 2, i + 2)] = speedSd * speedSd;
    covariance[at(i + 4, i + 4)] = common;
    covariance[at(i, i + 4)] = covariance[at(i + 4, i)] = -common;
  }
}

const at = (row: number, column: number): number => size * row + column;

export function copyHandsMotion(from: HandsMotion, to: HandsMotion): void {
  to.state.set(from.state);
  to.covariance.set(from.covariance);
}

export interface HandsWander {
  /** How much the square of the speed's error grows a second, square pixels a second cubed. */
  readonly speed: number;
  /** Share of the speed that is kept a second, as an exponent's rate. */
  readonly drag: number;
  /** What of the poses' common error is kept over the step, 0 to 1, and its standard deviation, pixels. */
  readonly poseKept: number;
  readonly poseSd: number;
}

/** Moves the hands `seconds` on. */
export function moveHands({ state, covariance: c }: HandsMotion, seconds: number, wander: HandsWander): void {
  const keep = Math.exp(-wander.drag * seconds);
  const kept = wander.poseKept;
  for (let i = 0; i < 2; i++) {
    state[i] = (state[i] as number) + (state[i + 2] as number) * seconds;
    state[i + 2] = (state[i + 2] as number) * keep;
    state[i + 4] = (state[i + 4] as number) * kept;
  }
  for (let k = 0; k < size; k++) {
    for (let i = 0; i < 2; i++) stepOn(c, at(i, k), at(i + 2, k), at(i + 4, k), seconds, keep, kept);
  }
  for (let k = 0; k < size; k++) {
    for (let i = 0; i < 2; i++) stepOn(c, at(k, i), at(k, i + 2), at(k, i + 4), seconds, keep, kept);
  }
  const fresh = wander.poseSd * wander.poseSd * (1 - kept * kept);
  for (let i = 0; i < 2; i++) {
    grow(c, at(i, i), (wander.speed * seconds * seconds * seconds) / 3);
    grow(c, at(i, i + 2), (wander.speed * seconds * seconds) / 2);
    grow(c, at(i + 2, i), (wander.speed * seconds * seconds) / 2);
    grow(c, at(i + 2, i + 2), wander.speed * seconds);
    grow(c, at(i + 4, i + 4), fresh);
  }
}

/** One column's or row's share of the step: place takes in speed, speed and the poses' error are kept in part. */
function stepOn(
  c: Float64Array,
  place: number,
  speed: number,
  off: number,
  seconds: number,
  keep: number,
  kept: number,
): void {
  c[place] = (c[place] as number) + (c[speed] as number) * seconds;
  c[speed] = (c[speed] as number) * keep;
  c[off] = (c[off] as number) * kept;
}

function grow(c: Float64Array, cell: number, by: number): void {
  c[cell] = (c[cell] as number) + by;
}

/**
 * The hands are seen at `place` along the unit vector (nx, ny) out of the picture's corner, give or take `sd` pixels; `byPose` 1 where a pose says so, with its own error
 * on top, 0 where the shaft does.
 */
export function seeHands(
  { state, covariance: c }: HandsMotion,
  nx: number,
  ny: number,
  place: number,
  sd: number,
  byPose: 0 | 1,
): void {
  for (let i = 0; i < size; i++) {
    const off = (c[at(i, 4)] as number) * nx + (c[at(i, 5)] as number) * ny;
    shared[i] = (c[at(i, 0)] as number) * nx + (c[at(i, 1)] as number) * ny + byPose * off;
  }
  const along = (from: Float64Array): number =>
    nx * (from[0] as number) +
    ny * (from[1] as number) +
    byPose * (nx * (from[4] as number) + ny * (from[5] as number));
  const total = along(shared) + sd * sd;
  const surprise = place - along(state);
  for (let i = 0; i < size; i++) state[i] = (state[i] as number) + ((shared[i] as number) * surprise) / total;
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < size; k++) grow(c, at(i, k), (-(shared[i] as number) * (shared[k] as number)) / total);
  }
}

const shared = new Float64Array(size);

/** Variance of the hands' place along the unit vector (nx, ny), square pixels. */
export const handsVariance = ({ covariance: c }: HandsMotion, nx: number, ny: number): number =>
  nx * nx * (c[at(0, 0)] as number) + 2 * nx * ny * (c[at(0, 1)] as number) + ny * ny * (c[at(1, 1)] as number);

/** Sets the place no farther than `farthest` pixels from (x, y). */
export function keepHandsNear({ state }: HandsMotion, x: number, y: number, farthest: number): void {
  const dx = (state[0] as number) - x;
  const dy = (state[1] as number) - y;
  const shorten = Math.min(1, farthest / (Math.hypot(dx, dy) || 1));
  state[0] = x + dx * shorten;
  state[1] = y + dy * shorten;
}
