import fc from "fast-check";
import { bandIds } from "@overcue/shared-geometry/bands";
import { stageIds } from "@overcue/shared-geometry/wire/practice";
import { placeCheckpointIds } from "@overcue/server/practice/drill/drill-schema";
import { takeawayAlone } from "@overcue/server/practice/drill/built-in/takeaway-alone";
import type { JournalEntry, PracticeEvent } from "@overcue/server/practice/journal/events";
import { journalOf, repId, repRecord } from "./entries.ts";

type Item = { readonly golferId: string; readonly event: PracticeEvent };

const checkpoint = fc.constantFrom(...placeCheckpointIds);
/** Metres; never minus nought, which JSON does not keep. */
const metres = fc.double({ min: -1, max: 1.2, noNaN: true }).map((value) => value + 0);
const place = fc.record({
  y: metres,
  sd: fc.double({ min: 0.005, max: 0.2, noNaN: true }),
});
const anyRepId = fc.integer({ min: 0, max: 60 }).map(repId);

const rep = fc
  .record({
    places: fc.dictionary(checkpoint, place, { minKeys: 1 }),
    calibration: fc.constantFrom("station", "station", "station", "demo", "suspect", "uncalibrated"),
    handed: fc.constantFrom("right", "right", "right", "left"),
    felt: place,
  })
  .map(({ places, calibration, handed, felt }) => ({
    make: (number: number): PracticeEvent => ({
      type: "rep-recorded",
      rep: repRecord(number, places, { calibration, handed, shown: [{ checkpoint: "arm-level-back", felt: felt.y }] }),
    }),
  }));

/** Every kind of event but reps; ids may or may not be of a rep that was made. */
const other: fc.Arbitrary<PracticeEvent> = fc.oneof(
  fc.record({ type: fc.constant("rep-voided" as const), repId: anyRepId }),
  fc.record({ type: fc.constant("rep-restored" as const), repId: anyRepId }),
  fc.record({ type: fc.constant("rep-starred" as const), repId: anyRepId, starred: fc.boolean() }),
  fc.record({
    type: fc.constant("reading-corrected" as const),
    repId: anyRepId,
    checkpoint,
    y: fc.option(metres),
  }),
  fc.record({
    type: fc.constant("felt-answered" as const),
    repId: anyRepId,
    checkpoint,
    band: fc.constantFrom(...bandIds),
  }),
  fc.record({ type: fc.constant("felt-question-set" as const), asked: fc.boolean() }),
  fc.record({
    type: fc.constant("mode-started" as const),
    mode: fc.constantFrom("baseline" as const, "practice" as const, "practice" as const, "retention-test" as const),
  }),
  fc.record({ type: fc.constant("stage-set" as const), stage: fc.constantFrom(...stageIds) }),
  fc.record({
    type: fc.constant("exaggeration-set" as const),
    checkpoint,
    metres,
  }),
  fc.record({ type: fc.constant("cue-locked" as const), locked: fc.boolean() }),
  fc.record({
    type: fc.constant("cue-mode-set" as const),
    cueMode: fc.constantFrom("adaptive" as const, "by-hand" as const),
  }),
  fc.constant({ type: "proposals-accepted" as const }),
  fc.constant({ type: "proposals-declined" as const }),
  fc.constant({ type: "felt-skipped" as const }),
  fc.record({
    type: fc.constant("feedback-set" as const),
    feedback: fc.constantFrom(
      "every-rep" as const,
      "every-second" as const,
      "summary-of-five" as const,
      "silent" as const,
    ),
  }),
  fc.record({
    type: fc.constant("drill-chosen" as const),
    drillId: fc.constantFrom("high-road-low-road", "first-third", "free"),
  }),
  fc.record({ type: fc.constant("wanted-set" as const), checkpoint, band: fc.option(fc.constantFrom(...bandIds)) }),
  fc.record({ type: fc.constant("paused-set" as const), paused: fc.boolean() }),
  fc.record({ type: fc.constant("session-started" as const), sessionId: fc.constantFrom("s1", "s2", "s3") }),
  fc.constantFrom("6-iron" as const, "7-iron" as const).map((club) => ({
    type: "station-set" as const,
    station: { club, toeLine: 0.6, heelLine: 0.9, tolerance: 0.05 },
  })),
  fc.constant({ type: "drill-saved" as const, drill: { ...takeawayAlone, id: "own" } }),
  fc.constant({ type: "note-added" as const, noteId: "n", text: "a note" }),
);

/** Two golfers' journals, mixed: mostly reps, with everything else between. Reps are numbered as they come. */
export const anyJournal: fc.Arbitrary<readonly JournalEntry[]> = fc
  .array(
    fc.record({
      golferId: fc.constantFrom("g", "g", "g", "h"),
      what: fc.oneof({ weight: 4, arbitrary: rep }, { weight: 1, arbitrary: other }),
    }),
    { maxLength: 60 },
  )
  .map((items) => {
    let reps = 0;
    const before: readonly Item[] = ["g", "h"].flatMap((golferId): readonly Item[] => [
      { golferId, event: { type: "golfer-added", golfer: { id: golferId, name: golferId, handed: "right" } } },
      { golferId, event: { type: "golfer-chosen" } },
    ]);
    return journalOf([
      ...before,
      ...items.map(({ golferId, what }): Item => ({ golferId, event: "make" in what ? what.make(++reps) : what })),
    ]);
  });
