import { imagePoint } from "@overcue/shared-geometry/point";
import type { ShaftInImage, ShaftReason } from "@overcue/shared-geometry/image-shaft";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import { pixels, radians, radiansPerSecond, type Milliseconds } from "@overcue/shared-geometry/units";
import type { FilterReading } from "./read-filter.ts";
import type { FittedCandidate } from "./fit-candidate.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** What one picture showed, before time is asked. */
export interface ShaftFinding {
  readonly t: Milliseconds;
  /** Why nothing was looked for, where `hands` is null. */
  readonly whyNot?: ShaftReason;
  /** Null where nothing was looked for. In picture pixels; `inside` says whether they lie in the picture. */
  readonly hands: {
    readonly x: number;
    readonly y: number;
    readonly torso: number;
    readonly seen: number;
    readonly inside: boolean;
    /** 0 low, as at address, to 1 high. */
    readonly high: number;
    /** 1 as low as at address, to 0; 0 where a rod lies along the shaft. */
    readonly low: number;
    /** The same of hands that are where they were, falling to 0 as they go. */
    readonly rests: number;
  } | null;
  readonly candidates: readonly FittedCandidate[];
  /** How far the shaft was seen at its length, 0 to 1; 0 where the odds do not say which line it is. */
  readonly long: number;
  /** The longest that the shaft can look by what was seen of it before, torso lengths. */
  readonly longest: number;
}

/** Of a picture in which nothing was looked for. */
export const nothingFound: Omit<ShaftFinding, "t"> = { hands: null, candidates: [], long: 0, longest: Infinity };

/**
 * Puts the odds and the picture's candidates together into one answer: tracked where a candidate of this picture lies where the odds are,
 * predicted where only the motion says so and says it sharply, lost otherwise.
 */
export function describeShaft(finding: ShaftFinding, reading: FilterReading, tuning: ShaftTuning): ShaftInImage {
  const { t, hands } = finding;
  if (hands === null) return { status: "lost", t, reason: finding.whyNot ?? "no-hands" };
  if (reading.absent > 0.5) return { status: "lost", t, reason: whyUnseen(hands, finding.longest, reading, tuning) };
  if (reading.mass < tuning.leastMass || reading.opposite > tuning.mostOpposite)
    return { status: "lost", t, reason: finding.longest < tuning.endOnUnder ? "end-on" : "ambiguous" };
  const seen = nearestCandidate(finding.candidates, reading, tuning);
  if (seen === null) return predict(finding, hands, reading, tuning);
  if (isEndOn(seen, finding.longest * hands.torso, hands.torso, tuning)) return { status: "lost", t, reason: "end-on" };
  const { angle, x, y, end } = seen;
  const length = end / hands.torso;
  const { reach, sd: headSd } = headOf(seen, hands.torso, reading, tuning);
  const tip = imagePoint(x + Math.cos(angle) * reach, y + Math.sin(angle) * reach);
  return {
    status: "tracked",
    t,
    grip: imagePoint(x, y),
    head: seen.headHidden ? null : tip,
    angle: radians(angle),
    sd: radians(
      Math.hypot(
        seen.angleSd,
        tuning.goesAside / length,
        blurSd(reading, tuning),
        strayed(seen, tuning),
        shortSd(length, tuning),
        tuning.doubtSd * (1 - reading.mass),
      ),
    ),
    angularRate: radiansPerSecond(reading.rate),
    offsetSd: pixels(seen.acrossSd),
    headSd: seen.headHidden ? null : pixels(headSd),
    rodSeen: seen.rodSeen,
  };
}

/** How far out the head is, and how exactly: by the line's end where that is plain, else by the run's. Picture pixels. */
function headOf(
  { end, plainEnd }: FittedCandidate,
  torso: number,
  { rate }: FilterReading,
  tuning: ShaftTuning,
): { readonly reach: number; readonly sd: number } {
  if (plainEnd !== null) return { reach: plainEnd, sd: tuning.lineEndSd * torso };
  return { reach: end, sd: tuning.headSd * torso * (1 + Math.abs(rate) * tuning.headRate) };
}

/** A turning shaft is a fan: its middle is less sure, the wider the fan may be. */
const blurSd = (reading: FilterReading, tuning: ShaftTuning): number => Math.abs(reading.rate) * tuning.blurSeconds;

/**
 * A shaft that points at the camera or away from it is a dot: a stub without an end, less than a hand's breadth of line, one as short as a forearm on a limb, or a line longer than the
 * shaft can have grown is something else, unless it is seen the better for it.
 */
function isEndOn(seen: FittedCandidate, longest: number, torso: number, tuning: ShaftTuning): boolean {
  const least = seen.endHidden
    ? tuning.leastHeadless
    : seen.onLimb > tuning.mostOnLimb
      ? tuning.leastOnLimb
      : tuning.leastLength;
  const beyond = Math.max(0, seen.end - longest) / torso;
  return seen.end < least * torso || seen.evidence - tuning.beyondCost * beyond < tuning.leastEvidence;
}

/** How much farther the fit strayed from the direction that was looked along than looks are apart: with part of another line in it, on rough ground. */
const strayed = ({ angle, sweepAngle }: FittedCandidate, { sweepStep }: ShaftTuning): number =>
  Math.max(0, Math.abs(wrapAngle(radians(angle - sweepAngle))) - (sweepStep * Math.PI) / 180);

/** Nearly end-on the head's width and the shaft's bow turn the line that is seen away from the shaft's. */
const shortSd = (length: number, { shortFrom, shortTo, shortMost }: ShaftTuning): number =>
  shortMost * Math.max(0, Math.min(1, (shortFrom - length) / (shortFrom - shortTo)));

function predict(
  { t, longest }: ShaftFinding,
  hands: NonNullable<ShaftFinding["hands"]>,
  reading: FilterReading,
  tuning: ShaftTuning,
): ShaftInImage {
  const reason = whyUnseen(hands, longest, reading, tuning);
  if (reading.spread > tuning.predictedSpread) return { status: "lost", t, reason };
  return {
    status: "predicted",
    t,
    reason,
    grip: imagePoint(hands.x, hands.y),
    head: null,
    angle: wrapAngle(radians(reading.angle)),
    sd: radians(Math.max(reading.spread, tuning.predictedSd)),
    angularRate: radiansPerSecond(reading.rate),
    offsetSd: pixels(tuning.offsetSd * hands.torso),
    headSd: null,
    rodSeen: false,
  };
}

function whyUnseen(
  hands: NonNullable<ShaftFinding["hands"]>,
  longest: number,
  reading: FilterReading,
  tuning: ShaftTuning,
): ShaftReason {
  if (!hands.inside) return "out-of-picture";
  if (reading.absent < 0.9 && Math.abs(reading.rate) > tuning.fastRate) return "blurred-away";
  if (longest < tuning.endOnUnder) return "end-on";
  if (hands.seen < tuning.handsSeen) return "hands-hidden";
  return "no-line-found";
}

/** A stick on the ground that lies in line with hands which move on is seen as well as the shaft, but not anew. */
const speaks = ({ evidence, novelty }: FittedCandidate): number => evidence * novelty;

/** The best seen of the lines where the odds are, by what is new of it. The direction of one that the fit did not bear out is hardly ever right. */
function nearestCandidate(
  candidates: readonly FittedCandidate[],
  reading: FilterReading,
  tuning: ShaftTuning,
): FittedCandidate | null {
  let best: FittedCandidate | null = null;
  for (const candidate of candidates) {
    if (!candidate.fitted || candidate.evidence < tuning.leastEvidence) continue;
    const away = Math.abs(wrapAngle(radians(candidate.sweepAngle - reading.angle)));
    if (away > Math.max(tuning.candidateReach, 1.5 * reading.spread)) continue;
    if (best === null || speaks(candidate) > speaks(best)) best = candidate;
  }
  return best;
}
