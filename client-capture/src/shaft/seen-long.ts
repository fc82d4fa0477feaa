import { wrapAngle } from "@overcue/shared-geometry/angle";
import { radians } from "@overcue/shared-geometry/units";
import type { FittedCandidate } from "./fit-candidate.ts";
import type { FilterReading } from "./read-filter.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * How far the shaft is seen at its length, 0 to 1, and not nearly end-on, by the line that lies where the odds are, whichever of its ends is the head's. 0 where
 * the odds name no line, or one longer than `longest` torso lengths. `torso` in picture pixels.
 */
export function seenLong(
  candidates: readonly FittedCandidate[],
  reading: FilterReading,
  torso: number,
  longest: number,
  tuning: ShaftTuning,
): number {
  if (reading.mass + reading.opposite < tuning.leastMass) return 0;
  let length = 0;
  for (const { sweepAngle, evidence, end } of candidates) {
    if (evidence < tuning.leastEvidence || end > longest * torso) continue;
    const away = Math.abs(wrapAngle(radians(2 * (sweepAngle - reading.angle)))) / 2;
    if (away < Math.max(tuning.candidateReach, 1.5 * reading.spread)) length = Math.max(length, end / torso);
  }
  return Math.max(0, Math.min(1, (length - tuning.longFrom) / (tuning.longTo - tuning.longFrom)));
}
