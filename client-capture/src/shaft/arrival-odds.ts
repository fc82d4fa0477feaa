import type { Handed } from "@overcue/shared-geometry/station";
import type { ShaftTuning } from "./shaft-tuning.ts";
import type { TurnFilter } from "./turn-filter.ts";

type ArrivingFilter = Pick<TurnFilter, "arrival" | "renewal">;

/** Odds over the directions of where a shaft first shows up, each summing to 1: with the hands low, as at address, and with the hands high. */
export interface ArrivalOdds {
  readonly low: Float32Array;
  readonly high: Float32Array;
  /** How far each direction is none that a club at address is seen in, 0 to 1. */
  readonly aside: Float32Array;
}

/** Seen down the line a club held low points at the ball, a club held high mostly up and back; either may point anywhere. */
export function arrivalOdds(directions: number, handed: Handed, tuning: ShaftTuning): ArrivalOdds {
  /** The cosine of how far each direction is from `middle`. */
  const towards = (middle: number): Float32Array => {
    const centre = handed === "right" ? middle : Math.PI - middle;
    return Float32Array.from({ length: directions }, (_, i) => Math.cos((2 * Math.PI * i) / directions - centre));
  };
  const lobe = (middle: number, narrowness: number, anywhere: number): Float32Array => {
    const odds = towards(middle).map((cosine) => Math.exp(narrowness * (cosine - 1)));
    const total = odds.reduce((sum, each) => sum + each, 0);
    return odds.map((each) => anywhere / directions + ((1 - anywhere) * each) / total);
  };
  return {
    low: lobe(tuning.addressDirection, tuning.arrivalNarrowness, tuning.arrivalAnywhere),
    high: lobe(tuning.highDirection, tuning.highNarrowness, tuning.highAnywhere),
    aside: towards(tuning.addressDirection).map((cosine) =>
      Math.max(0, Math.min(1, (Math.acos(cosine) - tuning.asideFrom) / (tuning.asideTo - tuning.asideFrom))),
    ),
  };
}

/**
 * The odds for hands that are `height` high, 0 low to 1 high, into the filter's. A shaft that was there comes out anew in any direction where the hands
 * are low (address, impact and finish are all that), and where shafts are seen where they are high.
 */
export function mixArrival({ low, high }: ArrivalOdds, height: number, { arrival, renewal }: ArrivingFilter): void {
  for (let i = 0; i < arrival.length; i++) {
    const up = (high[i] as number) * height;
    arrival[i] = (low[i] as number) * (1 - height) + up;
    renewal[i] = (1 - height) / renewal.length + up;
  }
}
