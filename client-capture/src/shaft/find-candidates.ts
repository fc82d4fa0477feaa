import type { LineSweep } from "./line-sweep-state.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** A direction that the shaft may have, in working pixels about the window's middle. */
export interface Candidate {
  angle: number;
  evidence: number;
  offset: number;
  end: number;
  /** Evidence on the far side of the hands. */
  through: number;
  /** Whether it was seen on the far side of the hands only: `offset` and `end` are then of the opposite direction. */
  borrowed: boolean;
}

/** The sweep's best directions, best first, at least `candidateApart` from each other. At most `most` of them, and none that nothing would be reported of. */
export function findCandidates(sweep: LineSweep, most: number, tuning: ShaftTuning): Candidate[] {
  const { directions, step, evidence } = sweep;
  const apart = Math.round(((tuning.candidateApart / 180) * Math.PI) / step);
  const taken: Candidate[] = [];
  const chosen: number[] = [];
  while (taken.length < most) {
    let best = -1;
    let top: number = tuning.leastEvidence;
    for (let i = 0; i < directions; i++) {
      const value = evidence[i] as number;
      if (!(value > top)) continue;
      if (chosen.some((other) => near(i, other, directions) < apart)) continue;
      best = i;
      top = value;
    }
    if (best < 0) break;
    chosen.push(best);
    const borrowed = sweep.borrowed[best] === 1;
    const seen = borrowed ? (best + directions / 2) % directions : best;
    taken.push({
      angle: best * step,
      evidence: top,
      offset: sweep.offset[seen] as number,
      end: sweep.end[seen] as number,
      through: sweep.through[seen] as number,
      borrowed,
    });
  }
  return taken;
}

const near = (a: number, b: number, directions: number): number => {
  const away = Math.abs(a - b) % directions;
  return Math.min(away, directions - away);
};
