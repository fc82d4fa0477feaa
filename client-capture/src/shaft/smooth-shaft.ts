import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { arrivalOdds, mixArrival } from "./arrival-odds.ts";
import { describeShaft } from "./describe-shaft.ts";
import { combineOdds } from "./lagged-answer.ts";
import { readFilter } from "./read-filter.ts";
import { shaftTuning, type ShaftTuning } from "./shaft-tuning.ts";
import type { ShaftEvidence } from "./track-shaft.ts";
import { predictTurn, predictTurnBack, makeTurnFilter, weighTurn, type TurnFilter } from "./turn-filter.ts";
import { weighFans } from "./weigh-fans.ts";
import { weighEmergence } from "./weigh-emergence.ts";
import { weighLowHands, weighRestingHands } from "./weigh-low-hands.ts";
import { weighDirections } from "./weigh-directions.ts";

/**
 * The full pass over kept evidence (a finished rep or a whole clip, in order of time): each answer rests on what came before and after.
 * One answer a picture. Empty in, empty out.
 */
export function smoothShaft(
  evidence: readonly ShaftEvidence[],
  overrides: Partial<ShaftTuning> = {},
): readonly ShaftInImage[] {
  const tuning: ShaftTuning = { ...shaftTuning, ...overrides };
  const first = evidence.find((each) => each.sweep.length > 0);
  if (first === undefined)
    return evidence.map(({ t, whyNot }) => ({ status: "lost", t, reason: whyNot ?? "no-hands" }));
  const directions = first.sweep.length;
  const arrival = arrivalOdds(directions, first.handed, tuning);
  const likelihood = new Float32Array(directions);
  const weighPicture = (filter: TurnFilter, at: number): void => {
    const each = evidence[at];
    if (each?.sweep.length !== directions) return;
    const { t, hands, sweep, side, novelty, clutter, emerging, candidates } = each;
    const elapsed = (t - (evidence[at - 1]?.t ?? t)) / 1000;
    weighDirections(sweep, side, novelty, clutter, tuning, likelihood);
    weighEmergence(likelihood, arrival.high, emerging);
    weighLowHands(likelihood, hands?.low ?? 0, elapsed, tuning);
    weighRestingHands(likelihood, arrival.aside, hands?.rests ?? 0, elapsed, tuning);
    weighFans(filter, candidates, likelihood, elapsed, tuning);
    weighTurn(filter, likelihood);
  };
  const forward = makeTurnFilter(arrival.low);
  const beliefs: Float32Array[] = [];
  const absents: number[] = [];
  evidence.forEach((each, i) => {
    const before = evidence[i - 1];
    mixArrival(arrival, before?.hands?.high ?? 0, forward);
    if (before !== undefined) predictTurn(forward, (each.t - before.t) / 1000, before.long, tuning);
    weighPicture(forward, i);
    beliefs.push(forward.belief.slice());
    absents.push(forward.absent);
  });
  const backward = makeTurnFilter(arrival.low);
  backward.absent = 1;
  backward.belief.fill(1);
  const answers: ShaftInImage[] = [];
  for (let i = evidence.length - 1; i >= 0; i--) {
    const each = evidence[i];
    const belief = beliefs[i];
    if (each === undefined || belief === undefined) continue;
    const absent = combineOdds(belief, absents[i] ?? 0, backward, belief);
    answers.push(describeShaft(each, readFilter(belief, directions, absent, tuning.nearMass), tuning));
    const before = evidence[i - 1];
    if (before === undefined) break;
    weighPicture(backward, i);
    mixArrival(arrival, before.hands?.high ?? 0, backward);
    predictTurnBack(backward, (each.t - before.t) / 1000, before.long, tuning);
  }
  return answers.reverse();
}
