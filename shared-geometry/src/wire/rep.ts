import { z } from "zod";
import { calibrationSchema, checkpointIdSchema, readOutsSchema } from "./estimate.ts";

const finite = z.number();
const spread = z.number().nonnegative();

/** A checkpoint of a rep: its instant with a standard error (milliseconds), and what was read there. */
export const checkpointReadingSchema = z.object({
  checkpoint: checkpointIdSchema,
  /** Milliseconds on the relay's clock. */
  at: finite,
  sdMs: spread,
  readOuts: readOutsSchema,
});

/** Told the moment a checkpoint is passed slowly enough to be read live; the finished rep's value replaces it in the book. */
export const liveCheckpointSchema = z.object({
  repId: z.uuid(),
  reading: checkpointReadingSchema,
  calibration: calibrationSchema,
  /** Set where a checkpoint that was shown before is corrected: the screen says so. */
  corrects: z.boolean(),
});

/** Why a swing that looked like a rep is not counted. */
export const notCountedReasons = ["club-lost", "too-long", "no-impact"] as const;

/** The movement under way is over and was no rep: what was told of it live is taken back. `why` is null where nobody expects it to count. */
export const noRepSchema = z.object({
  repId: z.uuid(),
  why: z.enum(notCountedReasons).nullable(),
});

export const repKinds = ["full", "half", "pump", "flow", "rehearsal"] as const;

/** A finished rep. Sent until acknowledged; the acknowledgement means that it is on disk. */
export const repSchema = z.object({
  id: z.uuid(),
  kind: z.enum(repKinds),
  startedAt: finite,
  endedAt: finite,
  handed: z.enum(["right", "left"]),
  calibration: calibrationSchema,
  checkpoints: z.array(checkpointReadingSchema).max(40),
  complete: z.boolean(),
  missing: z.array(checkpointIdSchema),
  /** `ratioSd`: one standard deviation; reps that were told before it was known have none. */
  tempo: z
    .object({ backswingSeconds: spread, downswingSeconds: spread, ratio: spread, ratioSd: spread.optional() })
    .nullable(),
  /** Share of the rep's frames on which the shaft was tracked. */
  trackedShare: z.number().min(0).max(1),
  /** The shaft over the rep, thinned: relay clock ms, grip x y z (m), azimuth, elevation (rad). */
  trajectory: z.array(z.tuple([finite, finite, finite, finite, finite, finite])).max(2000),
});

export type CheckpointReading = z.infer<typeof checkpointReadingSchema>;
export type LiveCheckpoint = z.infer<typeof liveCheckpointSchema>;
export type Rep = z.infer<typeof repSchema>;
export type NoRep = z.infer<typeof noRepSchema>;
export type NotCountedReason = (typeof notCountedReasons)[number];
export type RepKind = (typeof repKinds)[number];
