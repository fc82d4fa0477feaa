import { wrapAngle } from "@overcue/shared-geometry/angle";
import { radians } from "@overcue/shared-geometry/units";
import type { FittedCandidate } from "./fit-candidate.ts";
import type { FilterReading } from "./read-filter.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * How far the shaft is seen at its length, 0 to 1, and not nearly end-on, by the line that lies where the odds are, whichever of its ends is the head's. 0 where
 * the odds name no line. `torso` in picture pixels.
 */
export function seenLong(
  candidates: readonly FittedCandidate[],
  reading: FilterReading,
  torso: number,
  tuning: ShaftTuning,
): number {
  if (reading.mass + reading.opposite < tuning.leastMass) return 0;
  let longest = 0;
  for (const { sweepAngle, evidence, end } of candidates) {
    if (evidence < tuning.leastEvidence) continue;
    const away = Math.abs(wrapAngle(radians(2 * (sweepAngle - reading.angle)))) / 2;
    if (away < Math.max(tuning.candidateReach, 1.5 * reading.spread)) longest = Math.max(longest, end / torso);
  }
  return Math.max(0, Math.min(1, (longest - tuning.longFrom) / (tuning.longTo - tuning.longFrom)));
}
