/** The instants of a rep at which the club is read, in the order in which a full rep passes them. */
export const checkpointIds = [
  "address",
  "takeaway",
  "shaft-level-back",
  "arm-level-back",
  "top",
  "arm-level-down",
  "shaft-level-down",
  "impact",
] as const;

export type CheckpointId = (typeof checkpointIds)[number];

/** What the ground screen reads at a checkpoint as a band; null where the read-out is a direction or a height only. */
export const bandSubjects = ["butt-point", "head-point"] as const;
export type BandSubject = (typeof bandSubjects)[number];

export const bandSubjectAt: Readonly<Record<CheckpointId, BandSubject | null>> = {
  address: null,
  takeaway: "head-point",
  "shaft-level-back": "head-point",
  "arm-level-back": "butt-point",
  top: null,
  "arm-level-down": "butt-point",
  "shaft-level-down": "head-point",
  impact: null,
};

/** Words a golfer would use, as short as a screen read from three metres needs. */
export const checkpointLabels: Readonly<Record<CheckpointId, string>> = {
  address: "address",
  takeaway: "hands at trail thigh",
  "shaft-level-back": "shaft level, going back",
  "arm-level-back": "lead arm level, going back",
  top: "top",
  "arm-level-down": "lead arm level, coming down",
  "shaft-level-down": "shaft level, coming down",
  impact: "impact",
};
