import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { checkpointIds } from "@overcue/shared-geometry/checkpoints";
import type { Aim, Verdict } from "@overcue/shared-geometry/wire/practice";
import type { LiveCheckpoint } from "@overcue/shared-geometry/wire/rep";

export type StripMark = "in" | "beyond" | "short" | "unsure" | "not-read";

export interface StripItem {
  readonly checkpoint: CheckpointId;
  readonly mark: StripMark;
  /** Whether another band was told while it happened. */
  readonly corrected: boolean;
}

/** The strip of checkpoints after a rep, in the order of the swing: in the wanted band, beyond it, short of it, not sure, or not read. */
export function verdictMarks(
  aims: readonly Aim[],
  verdict: Verdict,
  corrected: ReadonlySet<CheckpointId>,
): readonly StripItem[] {
  return aims
    .toSorted((a, b) => checkpointIds.indexOf(a.checkpoint) - checkpointIds.indexOf(b.checkpoint))
    .map((aim) => ({
      checkpoint: aim.checkpoint,
      mark: markOf(aim, verdict),
      corrected: corrected.has(aim.checkpoint),
    }));
}

/** The checkpoints of a rep whose live answer the finished rep took back. */
export function correctedIn(checkpoints: readonly LiveCheckpoint[], repId: string): ReadonlySet<CheckpointId> {
  const corrections = checkpoints.filter((told) => told.corrects && told.repId === repId);
  return new Set(corrections.map(({ reading }) => reading.checkpoint));
}

function markOf({ checkpoint, wanted }: Aim, { places }: Verdict): StripMark {
  const place = places.find((read) => read.checkpoint === checkpoint);
  if (place === undefined) return "not-read";
  if (place.inWanted === null) return "unsure";
  if (place.inWanted) return "in";
  return place.y < (wanted.from + wanted.to) / 2 ? "beyond" : "short";
}

export const stripWords: Readonly<Record<StripMark, string>> = {
  in: "in the wanted band",
  beyond: "too far beyond the ball",
  short: "too near the heels",
  unsure: "not sure",
  "not-read": "not read",
};
