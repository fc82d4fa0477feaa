import { bandSubjectAt, type BandSubject, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
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

/** Shorter still, where the swing's other checkpoints stand beside it: "back", "down", "level back". */
export const briefCheckpoint = (id: CheckpointId): string =>
  shortCheckpoint[id].replace("arm level ", "").replace("shaft ", "");

/** What the key word is about: the end of the club that is read at `moment`, now or when it was passed. */
export function headingFor(estimate: Estimate | null, moment: CheckpointId | null, passed: boolean): string {
  const subject = (moment === null ? null : bandSubjectAt[moment]) ?? subjectOf(estimate);
  if (subject === null) return "";
  if (subject === "butt-point") return passed ? "butt pointed at" : "butt points at";
  return passed ? "head was over" : "head is over";
}

const subjectOf = (estimate: Estimate | null): BandSubject | null =>
  estimate === null ? null : liveSubject(estimate.readOuts, null).subject;
