import type { ShaftTuning } from "./shaft-tuning.ts";

const places = 64;
/** Seconds between two places that are remembered, at least. */
const apart = 0.1;

/** Where the hands were over the last while, picture pixels without the sway, oldest overwritten first. */
export interface HandsStay {
  readonly t: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  count: number;
}

export const makeHandsStay = (): HandsStay => ({
  t: new Float64Array(places),
  x: new Float64Array(places),
  y: new Float64Array(places),
  count: 0,
});

/**
 * Share of the time over which the background is averaged in which the hands were where they are now, 0 to 1: no more than that of what they carry can have been
 * there all along. Remembers where they are. `seconds` is now; 1 where nothing is remembered.
 */
export function stayedShare(
  stay: HandsStay,
  seconds: number,
  x: number,
  y: number,
  torso: number,
  tuning: ShaftTuning,
): number {
  let here = 0;
  let all = 0;
  let after = seconds;
  for (let back = 1; back <= Math.min(places, stay.count); back++) {
    const at = (stay.count - back) % places;
    const t = stay.t[at] as number;
    const away = Math.hypot(x - (stay.x[at] as number), y - (stay.y[at] as number)) / torso;
    const weight = Math.exp((t - seconds) / tuning.backgroundTime) * Math.min(1, after - t);
    all += weight;
    here += weight * Math.exp(-((away / tuning.stayReach) ** 2));
    after = t;
  }
  if (stay.count === 0 || seconds - (stay.t[(stay.count - 1) % places] as number) >= apart) {
    const at = stay.count++ % places;
    stay.t[at] = seconds;
    stay.x[at] = x;
    stay.y[at] = y;
  }
  return all > 0 ? here / all : 1;
}
