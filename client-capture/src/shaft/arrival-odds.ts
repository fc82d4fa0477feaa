import type { Handed } from "@overcue/shared-geometry/station";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Odds over the directions of where a shaft first shows up, each summing to 1: with the hands low, as at address, and with the hands high. */
export interface ArrivalOdds {
  readonly low: Float32Array;
  readonly high: Float32Array;
}

/** Seen down the line a club held low points at the ball, a club held high mostly up and back; either may point anywhere. */
export function arrivalOdds(directions: number, handed: Handed, tuning: ShaftTuning): ArrivalOdds {
  const lobe = (middle: number, narrowness: number, anywhere: number): Float32Array => {
    const centre = handed === "right" ? middle : Math.PI - middle;
    const odds = Float32Array.from({ length: directions }, (_, i) =>
      Math.exp(narrowness * (Math.cos((2 * Math.PI * i) / directions - centre) - 1)),
    );
    const total = odds.reduce((sum, each) => sum + each, 0);
    return odds.map((each) => anywhere / directions + ((1 - anywhere) * each) / total);
  };
  return {
    low: lobe(tuning.addressDirection, tuning.arrivalNarrowness, tuning.arrivalAnywhere),
    high: lobe(tuning.highDirection, tuning.highNarrowness, tuning.highAnywhere),
  };
}

/** The odds for hands that are `height` high, 0 low to 1 high, into `into`. */
export function mixArrival({ low, high }: ArrivalOdds, height: number, into: Float32Array): void {
  for (let i = 0; i < into.length; i++) {
    into[i] = (low[i] as number) * (1 - height) + (high[i] as number) * height;
  }
}
