import type { Pace, ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import { lengthOf } from "./vector.ts";

/** The pace `seconds` later for all that the past tells: what a motion does now, or has done lately. */
export function paceSince({ pace, turn, velocity }: ShaftMotion, seconds: number): Pace {
  const { paceLasts, leastTurnPace, leastHandPace } = filterTuning;
  const kept = Math.exp(-seconds / paceLasts);
  return {
    turn: Math.max(leastTurnPace, lengthOf(turn), kept * pace.turn),
    hands: Math.max(leastHandPace, lengthOf(velocity), kept * pace.hands),
  };
}

/** The pace at each motion of a row that is known from end to end. */
export function pacesOf(motions: readonly ShaftMotion[]): Pace[] {
  const speeds = motions.map(({ turn, velocity }) => ({ turn: lengthOf(turn), hands: lengthOf(velocity) }));
  let first = 0;
  return motions.map(({ t }) => {
    while ((motions[first]?.t ?? t) < t - 1000 * filterTuning.paceWithin) first++;
    let turn = 0;
    let hands = 0;
    for (let index = first; (motions[index]?.t ?? Infinity) <= t + 1000 * filterTuning.paceWithin; index++) {
      turn = Math.max(turn, speeds[index]?.turn ?? 0);
      hands = Math.max(hands, speeds[index]?.hands ?? 0);
    }
    return { turn, hands };
  });
}

/** Densities of white acceleration at a pace: of the turn, rad2/s3, and of the hands, m2/s3. */
export function unrestAt({ turn, hands }: Pace): { readonly turn: number; readonly hands: number } {
  const { turnUnrest, handUnrest, unrestTurn, leastUnrest, mostUnrest } = filterTuning;
  const lasts = Math.min(mostUnrest, Math.max(leastUnrest, unrestTurn / Math.max(turn, 1e-3)));
  return { turn: lasts * at(turnUnrest, turn) ** 2, hands: lasts * at(handUnrest, hands) ** 2 };
}

const at = ([rest, perRate, perSquare]: readonly [number, number, number], rate: number): number =>
  rest + perRate * rate + perSquare * rate * rate;
