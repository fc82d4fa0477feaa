import type { LineSweep } from "./line-sweep-state.ts";

/**
 * With a rod along the shaft and out of the butt, what is seen on one side of the hands may be either end of the same straight thing. Each
 * direction therefore borrows its opposite's evidence, less `cost` nats, where that is the stronger: which end is the head's is left to the motion.
 */
export function borrowFromRod(sweep: LineSweep, cost: number): void {
  const half = sweep.directions / 2;
  const { evidence } = sweep;
  for (let i = 0; i < half; i++) {
    const near = evidence[i] as number;
    const far = evidence[i + half] as number;
    sweep.borrowed[i] = 0;
    sweep.borrowed[i + half] = 0;
    if (far - cost > near) borrow(sweep, i, i + half, cost);
    else if (near - cost > far) borrow(sweep, i + half, i, cost);
  }
}

function borrow(sweep: LineSweep, into: number, from: number, cost: number): void {
  sweep.borrowed[into] = 1;
  sweep.evidence[into] = (sweep.evidence[from] as number) - cost;
  sweep.fresh[into] = sweep.fresh[from] as number;
}
