import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { checkpointIds } from "@overcue/shared-geometry/checkpoints";
import type { Aim, Verdict } from "@overcue/shared-geometry/wire/practice";

export type StripMark = "in" | "beyond" | "short" | "unsure" | "not-read";

export interface StripItem {
  readonly checkpoint: CheckpointId;
  readonly mark: StripMark;
}

/** The strip of checkpoints after a rep, in the order of the swing: in the wanted band, beyond it, short of it, not sure, or not read. */
export function verdictMarks(aims: readonly Aim[], verdict: Verdict): readonly StripItem[] {
  return aims
    .toSorted((a, b) => checkpointIds.indexOf(a.checkpoint) - checkpointIds.indexOf(b.checkpoint))
    .map((aim) => ({ checkpoint: aim.checkpoint, mark: markOf(aim, verdict) }));
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
