import type { FittedCandidate } from "./fit-candidate.ts";
import { seenOdds } from "./seen-odds.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import type { TurnFilter } from "./turn-filter.ts";
import { turnRates } from "./turn-rates.ts";

/**
 * Weighs in what a picture's fans say, beside its lines (`likelihood`, which `weighTurn` weighs after this): of a direction the better of the two counts. A shaft cannot have turned farther while
 * the shutter was open than from one picture to the next, `seconds` apart: slower rates gain nothing by a fan.
 */
export function weighFans(
  filter: TurnFilter,
  candidates: readonly FittedCandidate[],
  likelihood: Float32Array,
  seconds: number,
  tuning: ShaftTuning,
): void {
  const { belief, directions } = filter;
  const step = (2 * Math.PI) / directions;
  const reach = Math.round((tuning.peakReach * directions) / 360);
  for (const { turned, sweepAngle, evidence } of candidates) {
    if (turned <= 0) continue;
    const gain = Math.min(tuning.evidenceCap, tuning.evidenceWeight * (evidence - tuning.fanClutter));
    const odds = seenOdds(gain, tuning);
    const middle = Math.round(sweepAngle / step);
    for (let away = -reach; away <= reach; away++) {
      const direction = (((middle + away) % directions) + directions) % directions;
      const beyond = odds / (likelihood[direction] as number);
      if (beyond <= 1) continue;
      for (let rate = 0; rate < turnRates.length; rate++) {
        if (Math.abs(turnRates[rate] as number) * seconds < tuning.fanRate * turned) continue;
        const at = rate * directions + direction;
        belief[at] = (belief[at] as number) * beyond;
      }
    }
  }
}
