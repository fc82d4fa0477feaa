import { wrapAngle } from "@overcue/shared-geometry/angle";
import { radians, radiansFromDegrees, degrees } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import type { Candidate } from "./find-candidates.ts";
import type { ShaftSight } from "./look-for-shaft.ts";
import { findLineEnd } from "./find-line-end.ts";
import { refineLine } from "./refine-line.ts";
import { shareOnLimb } from "./share-on-limb.ts";

/** A candidate after the fit at full resolution. Pixels of the picture, radians. */
export interface FittedCandidate {
  /** The point of the line nearest to the hands. */
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  /** The direction as the sweep had it. */
  readonly sweepAngle: number;
  readonly angleSd: number;
  readonly acrossSd: number;
  /** Where along the line the run ends, from (x, y). */
  readonly end: number;
  /** The same at full resolution, where it is plain to see. */
  readonly plainEnd: number | null;
  readonly evidence: number;
  /** How far what is seen there is more than another look at the same still thing, 0 to 1. */
  readonly novelty: number;
  readonly rodSeen: boolean;
  /** Whether the run's end is not the head: it goes on to the picture's border, or lies on the rod's side. */
  readonly headHidden: boolean;
  /** Whether nothing ends there either: of a rod that is seen in the shaft's place the end is. */
  readonly endHidden: boolean;
  /** Share of the run that lies on an arm or a leg, or beside one, 0 to 1. */
  readonly onLimb: number;
  /** Whether the fit at full resolution bore it out; otherwise its direction is the sweep's, and hardly ever right. */
  readonly fitted: boolean;
  /** How far the shaft turned while the shutter was open where it is seen as a fan (`findFans`), radians; 0 for a line. */
  readonly turned: number;
}

const farthestTurn = radiansFromDegrees(degrees(5));

/** Fits a candidate of the sweep at full resolution. Where the fit fails or runs off, the sweep's line is kept and its error is not known. */
export function fitCandidate(sight: ShaftSight, picture: Picture, candidate: Candidate): FittedCandidate {
  const { work, window, tuning } = sight;
  const hands = sight.hands.now;
  const { evidence, borrowed } = candidate;
  // What was seen on the far side only is fitted there, and turned about at the end.
  const angle = borrowed ? candidate.angle + Math.PI : candidate.angle;
  const offset = candidate.offset * work.factor;
  const end = candidate.end * work.factor;
  const guess = {
    x: (window.centreX + 0.5) * work.factor - Math.sin(angle) * offset,
    y: (window.centreY + 0.5) * work.factor + Math.cos(angle) * offset,
    angle,
    from: tuning.nearest * hands.torso,
    to: end,
  };
  // A rod lies beside the shaft, not in it: what is seen is partly the one and partly the other. On the far side there is the rod alone.
  const beside = sight.rodAlong || candidate.through > tuning.rodEvidence;
  const fit = refineLine(
    picture,
    guess,
    hands.torso,
    beside && !borrowed && end > tuning.steppedFrom * hands.torso ? tuning.rodBeside : 0,
  );
  const fitted = fit !== null && Math.abs(wrapAngle(radians(fit.angle - angle))) < farthestTurn;
  const line = fitted ? fit : guess;
  const along = (hands.x - line.x) * Math.cos(line.angle) + (hands.y - line.y) * Math.sin(line.angle);
  const stepped = fitted && fit.step !== 0;
  const leaves = isNearBorder(
    picture,
    line.x + Math.cos(line.angle) * end,
    line.y + Math.sin(line.angle) * end,
    tuning.borderShare * hands.torso,
  );
  const plainEnd = fitted && !borrowed && !leaves ? findLineEnd(picture, line, end, hands.torso) : null;
  return {
    x: line.x + Math.cos(line.angle) * along,
    y: line.y + Math.sin(line.angle) * along,
    sweepAngle: candidate.angle,
    angle: wrapAngle(radians(borrowed ? line.angle + Math.PI : line.angle)),
    angleSd: Math.hypot(
      fitted ? tuning.fitErrs * fit.angleSd : Infinity,
      beside ? (stepped ? tuning.steppedSd : Math.hypot(tuning.rodSd, tuning.rodPixels / hands.torso)) : 0,
    ),
    acrossSd: Math.hypot(
      fitted ? fit.acrossSd : Infinity,
      hands.torso * (beside ? tuning.rodAcross : tuning.leastAcross),
    ),
    end: end - along,
    plainEnd: plainEnd === null ? null : plainEnd - along,
    evidence,
    novelty: sight.novelty[Math.round(candidate.angle / sight.sweep.step) % sight.novelty.length] as number,
    rodSeen: borrowed || (sight.rod !== null && candidate.through > tuning.rodEvidence),
    fitted,
    turned: 0,
    onLimb: shareOnLimb(
      sight.marks,
      [-Math.sin(angle) * candidate.offset, Math.cos(angle) * candidate.offset, angle],
      (tuning.nearest * hands.torso) / work.factor,
      candidate.end,
      (tuning.besideLimb * hands.torso) / work.factor,
      Math.round(255 * Math.max(tuning.armTrust, tuning.legTrust)),
    ),
    headHidden: borrowed || leaves,
    endHidden: leaves || (borrowed && !sight.rodAlong),
  };
}

function isNearBorder({ width, height }: Picture, x: number, y: number, margin: number): boolean {
  return x < margin || y < margin || x > width - margin || y > height - margin;
}
