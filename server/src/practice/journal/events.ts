import { bandIdSchema } from "@overcue/shared-geometry/wire/estimate";
import { clubIdSchema, handedSchema, stageIdSchema } from "@overcue/shared-geometry/wire/practice";
import { repSchema } from "@overcue/shared-geometry/wire/rep";
import { z } from "zod";
import { drillSchema, placeCheckpointIds } from "../drill/drill-schema.ts";

const finite = z.number();
const id = z.string().min(1).max(80);
const placeCheckpoint = z.enum(placeCheckpointIds);

const golferSchema = z.object({
  id,
  name: z.string().min(1).max(60),
  handed: handedSchema,
  /** Set for the demo golfer: nobody, whose reps are demonstrated and never anybody's figures. */
  invented: z.boolean().optional(),
});

const stationSchema = z.object({
  club: clubIdSchema,
  toeLine: finite,
  heelLine: finite,
  tolerance: z.number().positive(),
});

/** A rep as the journal keeps it: everything but the trajectory, and the places that were to be felt when it was made (y, metres). */
const repRecordSchema = repSchema.omit({ trajectory: true }).extend({
  shown: z.array(z.object({ checkpoint: placeCheckpoint, felt: finite })),
});

const about = <Type extends string, Shape extends z.ZodRawShape>(type: Type, shape: Shape) =>
  z.object({ type: z.literal(type), ...shape });

/** About the book as a whole, or about who is in it. */
const bookEventSchema = z.discriminatedUnion("type", [
  about("golfer-added", { golfer: golferSchema }),
  about("golfer-chosen", {}),
  about("drill-saved", { drill: drillSchema }),
  about("drill-deleted", { drillId: id }),
  about("paused-set", { paused: z.boolean() }),
  about("muted-set", { muted: z.boolean() }),
  about("view-set", { view: z.enum(["live", "quiet", "session"]) }),
]);

/** About one golfer's practice. */
const golferEventSchema = z.discriminatedUnion("type", [
  about("golfer-handed", { handed: handedSchema }),
  about("session-started", { sessionId: id }),
  about("station-set", { station: stationSchema }),
  about("drill-chosen", { drillId: id }),
  about("wanted-set", { checkpoint: placeCheckpoint, band: bandIdSchema.nullable() }),
  about("rep-recorded", { rep: repRecordSchema }),
  about("reading-corrected", { repId: z.uuid(), checkpoint: placeCheckpoint, y: finite.nullable() }),
  about("rep-voided", { repId: z.uuid() }),
  about("rep-restored", { repId: z.uuid() }),
  about("rep-starred", { repId: z.uuid(), starred: z.boolean() }),
  about("mode-started", { mode: z.enum(["baseline", "practice", "retention-test"]) }),
  about("stage-set", { stage: stageIdSchema }),
  about("exaggeration-set", { checkpoint: placeCheckpoint, metres: finite }),
  about("proposals-accepted", {}),
  about("proposals-declined", {}),
  about("cue-locked", { locked: z.boolean() }),
  about("cue-mode-set", { cueMode: z.enum(["adaptive", "by-hand"]) }),
  about("felt-answered", { repId: z.uuid(), checkpoint: placeCheckpoint, band: bandIdSchema }),
  about("felt-skipped", {}),
  about("felt-question-set", { asked: z.boolean() }),
  about("feedback-set", { feedback: z.enum(["every-rep", "every-second", "summary-of-five", "silent"]) }),
  about("note-added", { noteId: id, text: z.string().min(1).max(2000) }),
]);

/**
 * Everything that can happen to a practice. The journal is a list of these and nothing else is remembered: the state is their fold (`replay`).
 * Events about a golfer carry the golfer's id in their envelope.
 */
export const practiceEventSchema = z.discriminatedUnion("type", [bookEventSchema, golferEventSchema]);

/** An event with its place in the journal. `golferId` is null where it concerns the book as a whole. */
export const journalEntrySchema = z.object({
  /** Rises by at least one from entry to entry; gaps are where a golfer was deleted. */
  sequence: z.int().positive(),
  /** Milliseconds on the relay's clock. */
  at: finite,
  by: z.string().max(80),
  golferId: id.nullable(),
  event: practiceEventSchema,
});

export type Golfer = z.infer<typeof golferSchema>;
export type StationRecord = z.infer<typeof stationSchema>;
export type RepRecord = z.infer<typeof repRecordSchema>;
export type BookEvent = z.infer<typeof bookEventSchema>;
export type GolferEvent = z.infer<typeof golferEventSchema>;
export type PracticeEvent = z.infer<typeof practiceEventSchema>;
export type JournalEntry = z.infer<typeof journalEntrySchema>;

const bookEventTypes: ReadonlySet<string> = new Set(bookEventSchema.options.map(({ shape }) => shape.type.value));

export function isBookEvent(event: PracticeEvent): event is BookEvent {
  return bookEventTypes.has(event.type);
}
