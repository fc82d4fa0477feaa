import { borrow, chargeBoth } from "./borrow-from-rod.ts";
import { handsSdAcross, type HandsTrack } from "./hands-track.ts";
import type { LineSweep } from "./line-sweep-state.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * Nobody knows surely where along a line the hands are. A moving line that is seen on both sides of their place may be a shaft that lies wholly on the other side of them: each
 * of the two directions then borrows the other's evidence where that is the stronger, and how unlikely so wrong a place is goes to `sweep.side` as half log odds. Where
 * the shaft was before has the last word. What is longer on both sides together than any club is none on either. `torso` in working pixels.
 */
export function doubtHands(sweep: LineSweep, torso: number, hands: HandsTrack, tuning: ShaftTuning): void {
  const half = sweep.directions / 2;
  const { evidence, borrowed, side } = sweep;
  for (let i = 0; i < half; i++) {
    borrowed[i] = 0;
    borrowed[i + half] = 0;
    side[i] = 0;
    side[i + half] = 0;
    const [seen, other] = (evidence[i] as number) > (evidence[i + half] as number) ? [i, i + half] : [i + half, i];
    if (!((evidence[other] as number) > tuning.leastEvidence)) continue;
    const apart = Math.abs((sweep.offset[i] as number) + (sweep.offset[i + half] as number)) / torso;
    if (apart > tuning.sameLineMoving) continue;
    if ((sweep.end[i] as number) + (sweep.end[i + half] as number) > tuning.longestAcross * torso) {
      chargeBoth(evidence, seen, other, tuning);
      continue;
    }
    const odds = sideOdds(
      (sweep.end[seen] as number) / torso,
      handsSdAcross(hands, i * sweep.step + Math.PI / 2),
      tuning,
    );
    side[seen] = odds;
    side[other] = -odds;
    borrow(sweep, other, seen);
  }
}

/** Half the log odds against the hands' being at the far end of what is seen, by the tails of a Student t with 3 degrees of freedom as across the line. Torso lengths. */
const sideOdds = (length: number, sd: number, tuning: ShaftTuning): number =>
  Math.min(tuning.handsMost, Math.log(1 + (length / sd) ** 2 / 3));
