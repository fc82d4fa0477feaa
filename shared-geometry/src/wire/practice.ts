import { z } from "zod";
import { bandIdSchema, checkpointIdSchema } from "./estimate.ts";

const finite = z.number();

export const stageIds = ["slow-rehearsal", "flow", "added-speed", "rod-off", "ball"] as const;
export type StageId = (typeof stageIds)[number];
export const stageIdSchema = z.enum(stageIds);

/** Where on the ground, as y in metres from the ball line towards the heels (negative: beyond the ball). Closed at both ends. */
export const groundIntervalSchema = z.object({ from: finite, to: finite });

/** One checkpoint's aim as it stands now: what is wanted in reality and what is to be felt. */
export const aimSchema = z.object({
  checkpoint: checkpointIdSchema,
  wanted: groundIntervalSchema,
  felt: groundIntervalSchema,
  wantedBand: bandIdSchema,
  feltBand: bandIdSchema,
  /** Felt minus wanted, metres along y, signed. */
  exaggerateBy: finite,
  /** One sentence on why the cue stands where it does. */
  reason: z.string(),
});

/** What the ground screen shows after a rep; null while a silent rep keeps the answer back. */
export const verdictSchema = z.object({
  repId: z.uuid(),
  sentence: z.string(),
  places: z.array(
    z.object({
      checkpoint: checkpointIdSchema,
      y: finite,
      sd: finite,
      inWanted: z.boolean().nullable(),
      carryOver: finite.nullable(),
    }),
  ),
});

/** The whole practice as the relay knows it, sent to every display and coach at each change. */
export const practiceStateSchema = z.object({
  revision: z.int().nonnegative(),
  golfer: z.object({ id: z.string(), name: z.string(), handed: z.enum(["right", "left"]) }),
  drill: z.object({ id: z.string(), name: z.string() }),
  drills: z.array(z.object({ id: z.string(), name: z.string() })),
  layout: z.object({ toeLine: finite, heelLine: finite, tolerance: finite }),
  stage: stageIdSchema,
  mode: z.enum(["baseline", "practice", "retention-test"]),
  aims: z.array(aimSchema),
  cueLocked: z.boolean(),
  paused: z.boolean(),
  muted: z.boolean(),
  view: z.enum(["live", "quiet", "session"]),
  feedback: z.enum(["every-rep", "every-second", "summary-of-five", "silent"]),
  repsInBlock: z.int().nonnegative(),
  blockSize: z.int().positive(),
  repsInStage: z.int().nonnegative(),
  repsInSession: z.int().nonnegative(),
  /** Waiting for "which band did it feel like?" for this rep. */
  feltAnswerWanted: z.uuid().nullable(),
  verdict: verdictSchema.nullable(),
  pattern: z.object({
    name: z.enum(["flat-to-steep", "steep-to-flat", "even", "mixed", "not-enough-data"]),
    odds: z.number().min(0).max(1),
  }),
  /** One sentence each, for the session view and the coach. */
  advice: z.array(z.string()),
  lastChange: z.object({ by: z.string(), what: z.string(), at: finite }).nullable(),
});

export type PracticeState = z.infer<typeof practiceStateSchema>;
export type Aim = z.infer<typeof aimSchema>;
export type Verdict = z.infer<typeof verdictSchema>;
export type GroundInterval = z.infer<typeof groundIntervalSchema>;

/** What a display or a coach may ask the practice to do. `by` is a name or "ground screen". */
export const practiceCommandSchema = z.discriminatedUnion("do", [
  z.object({ do: z.literal("void-rep"), repId: z.uuid().nullable() }),
  z.object({ do: z.literal("star-rep"), repId: z.uuid(), starred: z.boolean() }),
  z.object({ do: z.literal("set-stage"), stage: stageIdSchema }),
  z.object({ do: z.literal("next-stage") }),
  z.object({ do: z.literal("set-drill"), drillId: z.string().max(80) }),
  z.object({ do: z.literal("set-exaggeration"), checkpoint: checkpointIdSchema, metres: z.number().min(-2).max(2) }),
  z.object({ do: z.literal("accept-proposal") }),
  z.object({ do: z.literal("lock-cue"), locked: z.boolean() }),
  z.object({ do: z.literal("answer-felt"), repId: z.uuid(), checkpoint: checkpointIdSchema, band: bandIdSchema }),
  z.object({
    do: z.literal("set-feedback"),
    feedback: z.enum(["every-rep", "every-second", "summary-of-five", "silent"]),
  }),
  z.object({ do: z.literal("pause"), paused: z.boolean() }),
  z.object({ do: z.literal("mute"), muted: z.boolean() }),
  z.object({ do: z.literal("view"), view: z.enum(["live", "quiet", "session"]) }),
  z.object({ do: z.literal("note"), text: z.string().min(1).max(2000) }),
  z.object({ do: z.literal("start-baseline") }),
  z.object({ do: z.literal("start-practice") }),
  z.object({ do: z.literal("start-retention-test") }),
]);

export type PracticeCommand = z.infer<typeof practiceCommandSchema>;

/** The books as the session view shows them. */
export const sessionViewSchema = z.object({
  blocks: z.array(
    z.object({
      stage: stageIdSchema,
      reps: z.int(),
      places: z.array(
        z.object({
          checkpoint: checkpointIdSchema,
          median: finite,
          spread: finite,
          carryOver: finite.nullable(),
          exaggerateBy: finite,
        }),
      ),
    }),
  ),
  feltGaps: z.array(z.object({ repId: z.uuid(), checkpoint: checkpointIdSchema, felt: finite, measured: finite })),
  reps: z.array(
    z.object({
      repId: z.uuid(),
      at: finite,
      starred: z.boolean(),
      voided: z.boolean(),
      places: z.array(z.object({ checkpoint: checkpointIdSchema, y: finite, sd: finite })),
    }),
  ),
});

export type SessionView = z.infer<typeof sessionViewSchema>;
