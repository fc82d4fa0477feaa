import { bandSubjectAt, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import { liveSubject } from "../ground-view/live-subject.ts";

/** Checkpoints as short as three metres ask for. */
export const shortCheckpoint: Readonly<Record<CheckpointId, string>> = {
  address: "address",
  takeaway: "takeaway",
  "shaft-level-back": "shaft level back",
  "arm-level-back": "arm level back",
  top: "top",
  "arm-level-down": "arm level down",
  "shaft-level-down": "shaft level down",
  impact: "impact",
};

/** What the key word is about: the end of the club that is read. */
export function headingFor(estimate: Estimate | null, aimedAt: CheckpointId | null): string {
  const subject =
    aimedAt !== null && bandSubjectAt[aimedAt] !== null
      ? bandSubjectAt[aimedAt]
      : estimate === null
        ? null
        : liveSubject(estimate.readOuts, aimedAt).subject;
  if (subject === null) return "";
  return subject === "butt-point" ? "butt points at" : "head is over";
}
