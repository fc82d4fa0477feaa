import type { ShaftTuning } from "./shaft-tuning.ts";
import type { TurnFilter } from "./turn-filter.ts";
import { turnRates } from "./turn-rates.ts";

/** Odds that the shaft turns so fast that its picture may be a fan. */
export function fanOdds({ belief, directions }: TurnFilter, { fanFrom }: ShaftTuning): number {
  let odds = 0;
  for (let rate = 0; rate < turnRates.length; rate++) {
    if (Math.abs(turnRates[rate] as number) < fanFrom) continue;
    for (let at = rate * directions; at < (rate + 1) * directions; at++) odds += belief[at] as number;
  }
  return odds;
}
