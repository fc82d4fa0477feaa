import type { Rectangle } from "../canvas.ts";

/**
 * The lens's blur: a Gaussian of the given standard deviation in pixels (under 0.7, three weights; five up to about 1.2), rows then
 * columns, three floats a pixel. Inside the rectangle only, whose edge pixels are repeated beyond it.
 */
export function blurLight(
  light: Float32Array,
  work: Float32Array,
  out: Float32Array,
  width: number,
  within: Rectangle,
  deviation: number,
): void {
  const near = Math.exp(-0.5 / Math.max(1e-3, deviation) ** 2);
  const far = deviation < 0.7 ? 0 : near ** 4;
  const total = 1 + 2 * near + 2 * far;
  const weights = [1 / total, near / total, far / total] as const;
  const stride = width * 3;
  const from = within.left * 3;
  const to = within.right * 3;
  const last = within.bottom - 1;
  for (let row = within.top; row < within.bottom; row++) {
    const start = row * stride;
    const clamp = (at: number): number => (at < start + from ? at + 3 : at >= start + to ? at - 3 : at);
    for (let at = start + from; at < start + from + 6; at++) work[at] = acrossEdge(light, at, clamp, weights);
    blurRun(light, work, start + from + 6, start + to - 6, 3, 3, 6, 6, weights);
    for (let at = start + to - 6; at < start + to; at++) work[at] = acrossEdge(light, at, clamp, weights);
  }
  for (let row = within.top; row < within.bottom; row++) {
    const start = row * stride;
    const up = (row - Math.max(within.top, row - 1)) * stride;
    const up2 = (row - Math.max(within.top, row - 2)) * stride;
    const down = (Math.min(last, row + 1) - row) * stride;
    const down2 = (Math.min(last, row + 2) - row) * stride;
    blurRun(work, out, start + from, start + to, up, down, up2, down2, weights);
  }
}

type Weights = readonly [number, number, number];

/** Weighs each float with its neighbours at the given steps back and on. */
function blurRun(
  from: Float32Array,
  to: Float32Array,
  first: number,
  end: number,
  back: number,
  on: number,
  back2: number,
  on2: number,
  [k0, k1, k2]: Weights,
): void {
  if (k2 === 0) {
    for (let at = first; at < end; at++) {
      to[at] = k0 * (from[at] ?? 0) + k1 * ((from[at - back] ?? 0) + (from[at + on] ?? 0));
    }
    return;
  }
  for (let at = first; at < end; at++) {
    to[at] =
      k0 * (from[at] ?? 0) +
      k1 * ((from[at - back] ?? 0) + (from[at + on] ?? 0)) +
      k2 * ((from[at - back2] ?? 0) + (from[at + on2] ?? 0));
  }
}

function acrossEdge(from: Float32Array, at: number, clamp: (at: number) => number, [k0, k1, k2]: Weights): number {
  const value = (step: number): number => from[clamp(clamp(at + step))] ?? 0;
  return k0 * value(0) + k1 * (value(-3) + value(3)) + k2 * (value(-6) + value(6));
}
