import { turnRates } from "./turn-rates.ts";

/** What the odds say: the likeliest direction, and how sure of it. */
export interface FilterReading {
  /** Radians, (-pi, pi] not guaranteed. */
  angle: number;
  rate: number;
  /** Share of all odds within twice `near` of the direction: what lies farther off is another line, or none. */
  mass: number;
  /** Standard deviation of the direction among those, radians. */
  spread: number;
  absent: number;
  /** The same as `mass`, half a turn off. */
  opposite: number;
}

/**
 * Reads odds over (rate, direction), rate-major. The likeliest direction is the middle of the heaviest stretch of `near` radians either
 * side; the rate is the mean over that stretch.
 */
export function readFilter(belief: Float32Array, directions: number, absent: number, near: number): FilterReading {
  const step = (2 * Math.PI) / directions;
  const reach = Math.max(1, Math.round(near / step));
  let best = -1;
  let bestAt = 0;
  const column = (i: number): number => {
    const at = ((i % directions) + directions) % directions;
    let total = 0;
    for (let rate = 0; rate < turnRates.length; rate++) total += belief[rate * directions + at] as number;
    return total;
  };
  let window = 0;
  for (let i = -reach; i <= reach; i++) window += column(i);
  for (let i = 0; i < directions; i++) {
    if (window > best) {
      best = window;
      bestAt = i;
    }
    window += column(i + reach + 1) - column(i - reach);
  }
  let mean = 0;
  let square = 0;
  let rateSum = 0;
  let mass = 0;
  for (let k = -reach; k <= reach; k++) {
    const at = (((bestAt + k) % directions) + directions) % directions;
    for (let rate = 0; rate < turnRates.length; rate++) {
      const odds = belief[rate * directions + at] as number;
      mass += odds;
      mean += odds * k;
      square += odds * k * k;
      rateSum += odds * (turnRates[rate] as number);
    }
  }
  let wide = 0;
  let opposite = 0;
  for (let k = -2 * reach; k <= 2 * reach; k++) {
    wide += column(bestAt + k);
    opposite += column(bestAt + directions / 2 + k);
  }
  const middle = mass > 0 ? mean / mass : 0;
  const variance = mass > 0 ? square / mass - middle * middle : 0;
  return {
    angle: (bestAt + middle) * step,
    rate: mass > 0 ? rateSum / mass : 0,
    mass: wide,
    spread: Math.sqrt(Math.max(0, variance) + 1 / 12) * step,
    absent,
    opposite,
  };
}
