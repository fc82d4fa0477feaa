import type { LineSweep } from "./line-sweep-state.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * With a rod along the shaft and out of the butt, what is seen on one side of the hands may be either end of the same straight thing. Each
 * direction therefore borrows its opposite's evidence, less a little, where that is the stronger. The shaft is the longer end and the less hidden one: the side
 * with clearly more evidence is the head's, by odds that go to `sweep.side`.
 */
export function borrowFromRod(sweep: LineSweep, tuning: ShaftTuning): void {
  const half = sweep.directions / 2;
  const { evidence, borrowed, side } = sweep;
  for (let i = 0; i < half; i++) {
    const near = evidence[i] as number;
    const far = evidence[i + half] as number;
    const odds = sideOdds(near, far, tuning);
    side[i] = odds;
    side[i + half] = -odds;
    borrowed[i] = 0;
    borrowed[i + half] = 0;
    if (far - tuning.borrowCost > near) borrow(sweep, i, i + half, tuning.borrowCost);
    else if (near - tuning.borrowCost > far) borrow(sweep, i + half, i, tuning.borrowCost);
  }
}

/** Half the log odds of the head's being on the near side; 0 where nobody looked, or neither side shows anything. */
function sideOdds(near: number, far: number, tuning: ShaftTuning): number {
  if (!(Math.max(near, far) > tuning.leastEvidence)) return 0;
  const clear = Math.max(0, Math.abs(near - far) - tuning.sideUnclear);
  return Math.sign(near - far) * Math.min(tuning.sideMost, tuning.sideSlope * clear);
}

function borrow(sweep: LineSweep, into: number, from: number, cost: number): void {
  sweep.borrowed[into] = 1;
  sweep.evidence[into] = (sweep.evidence[from] as number) - cost;
  sweep.fresh[into] = sweep.fresh[from] as number;
}
