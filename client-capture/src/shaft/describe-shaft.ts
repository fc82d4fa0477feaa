import { imagePoint } from "@overcue/shared-geometry/point";
import type { ShaftInImage, ShaftReason } from "@overcue/shared-geometry/image-shaft";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import { pixels, radians, radiansPerSecond, type Milliseconds } from "@overcue/shared-geometry/units";
import type { FilterReading } from "./read-filter.ts";
import type { FittedCandidate } from "./fit-candidate.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * Puts the odds and the picture's candidates together into one answer: tracked where a candidate of this picture lies where the odds are,
 * predicted where only the motion says so and says it sharply, lost otherwise.
 */
export function describeShaft(
  t: Milliseconds,
  reading: FilterReading,
  candidates: readonly FittedCandidate[],
  hands: { readonly x: number; readonly y: number; readonly torso: number } | null,
  tuning: ShaftTuning,
): ShaftInImage {
  const lost = (reason: ShaftReason): ShaftInImage => ({ status: "lost", t, reason });
  if (hands === null) return lost("no-hands");
  if (reading.absent > 0.5) return lost("no-line-found");
  if (reading.mass < tuning.leastMass) return lost("ambiguous");
  const seen = nearestCandidate(candidates, reading, tuning);
  const rest = {
    t,
    angularRate: radiansPerSecond(reading.rate),
    rodSeen: false,
  };
  if (seen === null) {
    if (reading.spread > tuning.predictedSpread) return lost("no-line-found");
    const angle = wrapAngle(radians(reading.angle));
    return {
      ...rest,
      status: "predicted",
      reason: "no-line-found",
      grip: imagePoint(hands.x, hands.y),
      head: null,
      angle,
      sd: radians(Math.max(reading.spread, tuning.predictedSd)),
      offsetSd: pixels(tuning.offsetSd * hands.torso),
      headSd: null,
    };
  }
  return {
    ...rest,
    status: "tracked",
    grip: imagePoint(seen.x, seen.y),
    head: imagePoint(seen.x + Math.cos(seen.angle) * seen.end, seen.y + Math.sin(seen.angle) * seen.end),
    angle: radians(seen.angle),
    sd: radians(Math.hypot(seen.angleSd, tuning.leastSd)),
    offsetSd: pixels(seen.acrossSd),
    headSd: pixels(0.1 * hands.torso),
  };
}

function nearestCandidate(
  candidates: readonly FittedCandidate[],
  reading: FilterReading,
  tuning: ShaftTuning,
): FittedCandidate | null {
  let best: FittedCandidate | null = null;
  for (const candidate of candidates) {
    if (candidate.evidence < tuning.leastEvidence) continue;
    const away = Math.abs(wrapAngle(radians(candidate.angle - reading.angle)));
    if (away > Math.max(tuning.candidateReach, 1.5 * reading.spread)) continue;
    if (best === null || candidate.evidence > best.evidence) best = candidate;
  }
  return best;
}
