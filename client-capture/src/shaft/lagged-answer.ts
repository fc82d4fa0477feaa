import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { Milliseconds } from "@overcue/shared-geometry/units";
import { mixArrival, type ArrivalOdds } from "./arrival-odds.ts";
import { describeShaft, type ShaftFinding } from "./describe-shaft.ts";
import { readFilter } from "./read-filter.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import { turnRates } from "./turn-rates.ts";
import { predictTurnBack, weighTurn, type TurnFilter } from "./turn-filter.ts";

/** The last few pictures as the filter left them, so that what came after can be weighed in. Changed in place, allocated once. */
export interface LagMemory {
  readonly slots: LagSlot[];
  readonly backward: TurnFilter;
  readonly product: Float32Array;
  /** Pictures taken in. */
  count: number;
}

interface LagSlot {
  t: Milliseconds;
  readonly belief: Float32Array;
  absent: number;
  readonly likelihood: Float32Array;
  finding: ShaftFinding;
}

/** `lag`: pictures between a picture and its lagged answer. `backward` is a filter of its own. */
export function makeLagMemory(lag: number, backward: TurnFilter, nothing: ShaftFinding): LagMemory {
  const { directions } = backward;
  const slots = Array.from({ length: lag + 1 }, () => ({
    t: nothing.t,
    belief: new Float32Array(turnRates.length * directions),
    absent: 1,
    likelihood: new Float32Array(directions).fill(1),
    finding: nothing,
  }));
  return { slots, backward, product: new Float32Array(turnRates.length * directions), count: 0 };
}

/** Takes in the newest picture as the filter has it; gives the answer for the picture `lag` before, null while there are too few. */
export function takeLagged(
  memory: LagMemory,
  filter: TurnFilter,
  likelihood: Float32Array,
  finding: ShaftFinding,
  arrival: ArrivalOdds,
  tuning: ShaftTuning,
): ShaftInImage | null {
  const { slots, backward, product } = memory;
  const newest = slots[memory.count % slots.length];
  if (newest === undefined) return null;
  newest.t = finding.t;
  newest.belief.set(filter.belief);
  newest.absent = filter.absent;
  newest.likelihood.set(likelihood);
  newest.finding = finding;
  memory.count++;
  if (memory.count < slots.length) return null;
  backward.belief.fill(1);
  backward.absent = 1;
  for (let back = 1; back < slots.length; back++) {
    const later = slots[(memory.count - back) % slots.length];
    const earlier = slots[(memory.count - back - 1) % slots.length];
    if (later === undefined || earlier === undefined) return null;
    weighTurn(backward, later.likelihood);
    mixArrival(arrival, earlier.finding.hands?.high ?? 0, backward);
    predictTurnBack(backward, (later.t - earlier.t) / 1000, earlier.finding.long, tuning);
  }
  const oldest = slots[memory.count % slots.length];
  if (oldest === undefined) return null;
  const absent = combineOdds(oldest.belief, oldest.absent, backward, product);
  return describeShaft(oldest.finding, readFilter(product, backward.directions, absent, tuning.nearMass), tuning);
}

/** Odds of a picture from what came before (`belief`, `absent`) and what came after (`backward`), into `into`; returns the odds of no shaft. */
export function combineOdds(belief: Float32Array, absent: number, backward: TurnFilter, into: Float32Array): number {
  let total = absent * backward.absent;
  for (let i = 0; i < belief.length; i++) {
    const odds = (belief[i] as number) * (backward.belief[i] as number);
    into[i] = odds;
    total += odds;
  }
  for (let i = 0; i < into.length; i++) into[i] = (into[i] as number) / total;
  return (absent * backward.absent) / total;
}
