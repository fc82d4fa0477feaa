import { bandSubjectAt, type BandSubject, type CheckpointId } from "./checkpoints.ts";

/** The two places on the ground that are read of a club, in whatever form. */
interface GroundReadOuts<T> {
  readonly buttPoint: T;
  readonly headPoint: T;
}

/** The read-out of a subject. */
export function placeReadOf<T>({ buttPoint, headPoint }: GroundReadOuts<T>, subject: BandSubject): T {
  return subject === "head-point" ? headPoint : buttPoint;
}

/** The read-out that a checkpoint is about; null where no place is read there. */
export function placeReadAt<T>(readOuts: GroundReadOuts<T>, checkpoint: CheckpointId): T | null {
  const subject = bandSubjectAt[checkpoint];
  return subject === null ? null : placeReadOf(readOuts, subject);
}
