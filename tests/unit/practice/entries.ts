import type { JournalEntry, PracticeEvent, RepRecord } from "@overcue/server/practice/journal/events";
import { readingAt } from "../../fakes/golfer-model.ts";
import type { PlaceCheckpoint } from "@overcue/server/practice/drill/drill-schema";

const usualLayout = { toeLine: 0.575, heelLine: 0.875, tolerance: 0.05 };

export const repId = (number: number): string => `00000000-0000-4000-8000-${String(number).padStart(12, "0")}`;

/** A rep with a reading at each named checkpoint. Metres. */
export function repRecord(
  number: number,
  places: Readonly<Partial<Record<PlaceCheckpoint, { readonly y: number; readonly sd: number }>>>,
  change: Partial<RepRecord> = {},
): RepRecord {
  const checkpoints = Object.entries(places).map(([name, { y, sd }], index) =>
    readingAt(name as PlaceCheckpoint, y, sd, 1000 * number + index, { layout: usualLayout }),
  );
  return {
    id: repId(number),
    kind: "full",
    startedAt: 1000 * number,
    endedAt: 1000 * number + 900,
    handed: "right",
    calibration: "station",
    checkpoints,
    complete: true,
    missing: [],
    tempo: null,
    trackedShare: 1,
    shown: [],
    ...change,
  };
}

/** Entries numbered from 1, twenty seconds apart. Events without a golfer of their own are about "g". */
export function journalOf(
  events: readonly (PracticeEvent | { readonly golferId: string; readonly event: PracticeEvent })[],
): readonly JournalEntry[] {
  return events.map((item, index) => {
    const { golferId, event } = "event" in item ? item : { golferId: "g", event: item };
    return { sequence: index + 1, at: 1_700_000_000_000 + 20_000 * index, by: "test", golferId, event };
  });
}

export const someone: readonly PracticeEvent[] = [
  { type: "golfer-added", golfer: { id: "g", name: "Test", handed: "right" } },
  { type: "golfer-chosen" },
];

/** The habit of a flat-back, steep-down golfer, read to 2 cm. */
export const habit = {
  takeaway: { y: 0.02, sd: 0.02 },
  "shaft-level-back": { y: 0.3, sd: 0.02 },
  "arm-level-back": { y: -0.3, sd: 0.02 },
  "arm-level-down": { y: 0.35, sd: 0.02 },
} as const;

/** A baseline of so many equal reps, numbered from 1. */
export const baselineReps = (count: number): readonly PracticeEvent[] =>
  Array.from({ length: count }, (_, index) => ({ type: "rep-recorded" as const, rep: repRecord(index + 1, habit) }));
