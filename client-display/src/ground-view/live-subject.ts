import { bandSubjectAt, type BandSubject, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { placeReadOf } from "@overcue/shared-geometry/place-read-at";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";

export type GroundReadOut = Estimate["readOuts"]["buttPoint"];

export interface LiveSubject {
  readonly subject: BandSubject;
  readonly readOut: GroundReadOut;
}

/**
 * What of the club is shown on the ground: what is read at the checkpoint aimed at. Without an aim, whichever is
 * defined: the butt point first, since the head point is defined for any shaft. Never the one in place of the other,
 * or a band would be shown that nobody aims at.
 */
export function liveSubject(readOuts: Estimate["readOuts"], aimedAt: CheckpointId | null): LiveSubject {
  const wanted = aimedAt === null ? null : bandSubjectAt[aimedAt];
  const subject = wanted ?? (readOuts.buttPoint.defined ? "butt-point" : "head-point");
  return { subject, readOut: placeReadOf(readOuts, subject) };
}
