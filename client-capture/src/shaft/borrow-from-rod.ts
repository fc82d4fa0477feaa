import type { LineSweep } from "./line-sweep-state.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * With a rod along the shaft and out of the butt, what is seen on one side of the hands may be either end of the same straight thing. Each
 * direction therefore borrows its opposite's evidence where that is the stronger. The shaft is the longer end and the less hidden one: the side
 * with clearly more evidence is the head's, by odds that go to `sweep.side`. What is longer than a rod on both sides is a rope. `torso` in working pixels.
 */
export function borrowFromRod(sweep: LineSweep, torso: number, tuning: ShaftTuning): void {
  const half = sweep.directions / 2;
  const { evidence, borrowed, side } = sweep;
  for (let i = 0; i < half; i++) {
    chargeRope(sweep, i, i + half, torso, tuning);
    const near = evidence[i] as number;
    const far = evidence[i + half] as number;
    const seen = (sweep.end[near > far ? i : i + half] as number) / torso;
    const odds = sideOdds(near, far, seen, tuning);
    side[i] = odds;
    side[i + half] = -odds;
    borrowed[i] = 0;
    borrowed[i + half] = 0;
    if (far > near) borrow(sweep, i, i + half);
    else if (near > far) borrow(sweep, i + half, i);
  }
}

/** Each side loses by what the other shows, where both are longer than a rod out of the butt can look. */
function chargeRope(
  { evidence, end }: LineSweep,
  i: number,
  opposite: number,
  torso: number,
  tuning: ShaftTuning,
): void {
  if (Math.min(end[i] as number, end[opposite] as number) <= tuning.rodLongest * torso) return;
  chargeBoth(evidence, i, opposite, tuning);
}

/** Each side loses by what both show: together they are longer than any club. */
export function chargeBoth(evidence: Float32Array, i: number, opposite: number, tuning: ShaftTuning): void {
  const cost = tuning.throughWeight * Math.max(0, Math.min(evidence[i] as number, evidence[opposite] as number));
  evidence[i] = (evidence[i] as number) - cost;
  evidence[opposite] = (evidence[opposite] as number) - cost;
}

/**
 * Half the log odds of the head's being on the near side; 0 where nobody looked, or neither side shows anything. `seen`: how far the stronger side is
 * seen, torso lengths. Where that is short the thing points at the camera or away from it, and the nearer end looks the longer.
 */
function sideOdds(near: number, far: number, seen: number, tuning: ShaftTuning): number {
  if (!(Math.max(near, far) > tuning.leastEvidence)) return 0;
  const clear = Math.max(
    0,
    Math.abs(near - far) - (seen > tuning.sideLong ? tuning.sideUnclear : tuning.sideUnclearShort),
  );
  const most =
    seen > tuning.rodLongest ? tuning.sideMostLong : seen > tuning.sideLong ? tuning.sideMost : tuning.sideMostShort;
  return Math.sign(near - far) * Math.min(most, tuning.sideSlope * clear);
}

export function borrow(sweep: LineSweep, into: number, from: number): void {
  sweep.borrowed[into] = 1;
  sweep.evidence[into] = sweep.evidence[from] as number;
  sweep.fresh[into] = sweep.fresh[from] as number;
}
