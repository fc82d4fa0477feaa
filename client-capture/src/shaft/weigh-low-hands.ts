import type { ShaftTuning } from "./shaft-tuning.ts";

/** How low the hands are, 1 as at address, 0 from where a club is seen to point up. `height`: from hips (0) to shoulders (1). */
export const lowness = (height: number, { lowTo, lowFrom }: ShaftTuning): number =>
  Math.max(0, Math.min(1, (lowFrom - height) / (lowFrom - lowTo)));

/**
 * A club in low hands hardly ever points up, and a net's post behind them always does: its likelihood falls by the time that it is seen so (`seconds` since the picture before). One that moves
 * is seen too well for that to matter, and one that is held so for a look is only believed later.
 */
export function weighLowHands(likelihood: Float32Array, low: number, seconds: number, tuning: ShaftTuning): void {
  if (low <= 0 || seconds <= 0) return;
  const nats = tuning.upCost * low * Math.min(seconds, tuning.longestGap);
  const step = (2 * Math.PI) / likelihood.length;
  for (let i = 0; i < likelihood.length; i++) {
    const up = Math.max(0, Math.min(1, (-Math.sin(i * step) - 0.5) / 0.35));
    if (up > 0) likelihood[i] = (likelihood[i] as number) * Math.exp(-nats * up);
  }
}

/**
 * A golfer who stands still with low hands holds the club as at address: what stands in another direction (`aside`, 0 to 1 for each, of `ArrivalOdds`) is a rope, an eave, a rail. Its likelihood falls faster
 * than looks at a still thing raise it. `rests`, 0 to 1: how far the hands are low and where they were.
 */
export function weighRestingHands(
  likelihood: Float32Array,
  aside: Float32Array,
  rests: number,
  seconds: number,
  tuning: ShaftTuning,
): void {
  if (rests <= 0 || seconds <= 0) return;
  const nats = tuning.asideCost * rests * Math.min(seconds, tuning.longestGap);
  for (let i = 0; i < likelihood.length; i++) {
    const off = aside[i] as number;
    if (off > 0) likelihood[i] = (likelihood[i] as number) * Math.exp(-nats * off);
  }
}
