import type { LineSweep } from "./line-sweep-state.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import { turnRates } from "./turn-rates.ts";
import type { TurnFilter } from "./turn-filter.ts";

/**
 * In which turn a direction is looked at. Neighbours have theirs far apart, and not in step: in order, odds that turn as fast as the looks go round would meet the same still line in every
 * picture, as if it were new each time.
 */
const turnOf = [0, 8, 4, 12, 2, 10, 6, 14, 1, 9, 5, 13, 3, 11, 7];

/**
 * Chooses the directions that are worth looking at in picture number `count`: where the odds expect the shaft, and a part of all others by
 * turns, so that nothing stays unseen for long; a greater part where it is `hurried`. A strip covers a direction and its opposite.
 */
export function wantDirections(
  sweep: LineSweep,
  filter: TurnFilter,
  count: number,
  hurried: boolean,
  tuning: ShaftTuning,
): void {
  const half = sweep.directions / 2;
  const turns = hurried ? tuning.turnsInHurry : tuning.turnsOfOthers;
  const least = tuning.wantedOdds / sweep.directions;
  for (let i = 0; i < half; i++) {
    let odds = 0;
    for (let rate = 0; rate < turnRates.length; rate++) {
      const at = rate * sweep.directions + i;
      odds = Math.max(odds, (filter.belief[at] as number) + (filter.belief[at + half] as number));
    }
    const turn = hurried ? i : (turnOf[i % turnOf.length] as number);
    sweep.wanted[i] = odds > least || (turn + count) % turns === 0 ? 1 : 0;
  }
}
