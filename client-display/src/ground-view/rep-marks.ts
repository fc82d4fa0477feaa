import { bandSubjectAt, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { placeReadOf } from "@overcue/shared-geometry/place-read-at";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { CheckpointReading, LiveCheckpoint, Rep } from "@overcue/shared-geometry/wire/rep";
import type { PlaceOnGround } from "./draw-list/draw-live.ts";

export interface RepMark extends PlaceOnGround {
  readonly checkpoint: CheckpointId;
}

export interface MarksQuestion {
  readonly practice: PracticeState | null;
  readonly checkpoints: readonly LiveCheckpoint[];
  readonly lastRep: Rep | null;
}

/**
 * The marks on the ground: of the rep under way as its checkpoints are told, then of the finished rep with its final
 * values. A silent rep leaves none, and only checkpoints with an aim leave one.
 */
export function repMarks({ practice, checkpoints, lastRep }: MarksQuestion): readonly RepMark[] {
  const aimed = practice?.aims.map(({ checkpoint }) => checkpoint) ?? null;
  const told = checkpoints.at(-1)?.repId ?? null;
  const underWay = told !== null && told !== lastRep?.id;
  if (underWay) {
    const shown = practice === null || (practice.nextRepAnswered && practice.view === "live");
    return shown ? checkpoints.flatMap(({ reading }) => markOf(reading, aimed)) : [];
  }
  const answered = lastRep !== null && practice?.verdict?.repId === lastRep.id;
  return answered ? lastRep.checkpoints.flatMap((reading) => markOf(reading, aimed)) : [];
}

function markOf(reading: CheckpointReading, aimed: readonly CheckpointId[] | null): readonly RepMark[] {
  const { checkpoint, readOuts } = reading;
  const subject = bandSubjectAt[checkpoint];
  if (subject === null || aimed?.includes(checkpoint) === false) return [];
  const place = placeReadOf(readOuts, subject);
  if (!place.defined) return [];
  const { x, y, sdX, sdY } = place;
  return [{ checkpoint, subject, x, y, sdX, sdY }];
}
