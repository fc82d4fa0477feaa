import { z } from "zod";
import { bandIdSchema, checkpointIdSchema } from "./estimate.ts";

export const handedSchema = z.enum(["right", "left"]);
export const clubIdSchema = z.enum(["driver", "5-iron", "6-iron", "7-iron", "8-iron", "9-iron"]);
const spread = z.number().nonnegative();

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
  /** The farthest that `exaggerateBy` goes without a person's yes, metres along y, signed. */
  cap: finite,
  /** The golfer's own place without feedback, metres along y; null before a baseline. */
  baseline: z.object({ median: finite, spread, sd: spread, reps: z.int().nonnegative() }).nullable(),
  /** Share of the wanted change reached in the last finished block; null where there is none or no change is wanted. */
  carryOver: z.object({ value: finite, sd: spread }).nullable(),
  /** One sentence on why the cue stands where it does. */
  reason: z.string(),
});

/** A move of the cue that waits for a person's yes. */
export const proposalSchema = z.object({
  checkpoint: checkpointIdSchema,
  exaggerateBy: finite,
  pastCap: z.boolean(),
  reason: z.string(),
});

export const retentionKinds = ["next-day", "after-weeks"] as const;
export const retentionKindSchema = z.enum(retentionKinds);

/** What the ground screen shows after a rep; null while a silent rep keeps the answer back. */
export const verdictSchema = z.object({
  repId: z.uuid(),
  /** `inside`: nothing is wrong enough to be said, so it is shown but not spoken; `summary`: the places are medians of the reps since the last one. */
  kind: z.enum(["answer", "inside", "summary"]),
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

/** `invented`: the demo golfer, who is nobody and has a book of their own. */
const golferSchema = z.object({
  id: z.string(),
  name: z.string(),
  handed: handedSchema,
  invented: z.boolean().optional(),
});

/** The whole practice as the relay knows it, sent to every display and coach at each change. */
export const practiceStateSchema = z.object({
  revision: z.int().nonnegative(),
  golfer: golferSchema,
  golfers: z.array(golferSchema),
  club: clubIdSchema,
  drill: z.object({
    id: z.string(),
    name: z.string(),
    summary: z.string(),
    /** Where the drill's numbers come from, as it says of itself. */
    source: z.string(),
    layOut: z.array(z.string()),
    say: z.array(z.string()),
    cautions: z.array(z.string()),
    /** Where the club head should stay until the hands pass the trail thigh; null where the drill has no corridor. */
    corridor: groundIntervalSchema.nullable(),
  }),
  drills: z.array(z.object({ id: z.string(), name: z.string(), builtIn: z.boolean() })),
  layout: z.object({ toeLine: finite, heelLine: finite, tolerance: finite }),
  stage: stageIdSchema,
  mode: z.enum(["baseline", "practice", "retention-test"]),
  aims: z.array(aimSchema),
  /** Moves of the cue that wait for a person's yes (`accept-proposal` takes all of them). */
  proposals: z.array(proposalSchema),
  cueMode: z.enum(["adaptive", "by-hand"]),
  cueLocked: z.boolean(),
  /** Whether the practice rod belongs beyond the grip in this stage. */
  rodOn: z.boolean(),
  paused: z.boolean(),
  muted: z.boolean(),
  view: z.enum(["live", "quiet", "session"]),
  feedback: z.enum(["every-rep", "every-second", "summary-of-five", "silent"]),
  repsInBlock: z.int().nonnegative(),
  blockSize: z.int().positive(),
  repsInStage: z.int().nonnegative(),
  repsInSession: z.int().nonnegative(),
  /** False where the next rep is a silent one: no live point, no tone, no verdict. */
  nextRepAnswered: z.boolean(),
  /** Whether "which band did it feel like?" is asked before an answer is shown. */
  feltQuestion: z.boolean(),
  /** Waiting for "which band did it feel like?" for this rep, at this checkpoint. */
  feltAnswerWanted: z.uuid().nullable(),
  feltAnswerCheckpoint: checkpointIdSchema.nullable(),
  /** A test without feedback that is due, offered by itself; null where none is. */
  retentionOffer: z.object({ kind: retentionKindSchema, sentence: z.string() }).nullable(),
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
export type Proposal = z.infer<typeof proposalSchema>;
export type RetentionKind = z.infer<typeof retentionKindSchema>;
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
  z.object({ do: z.literal("restore-rep"), repId: z.uuid() }),
  /** A person's correction of one reading; null leaves it out. Metres along y. */
  z.object({
    do: z.literal("correct-reading"),
    repId: z.uuid(),
    checkpoint: checkpointIdSchema,
    y: z.number().min(-5).max(5).nullable(),
  }),
  z.object({ do: z.literal("decline-proposal") }),
  z.object({ do: z.literal("set-cue-mode"), cueMode: z.enum(["adaptive", "by-hand"]) }),
  z.object({ do: z.literal("ask-felt"), asked: z.boolean() }),
  z.object({ do: z.literal("skip-felt") }),
  z.object({ do: z.literal("add-golfer"), name: z.string().trim().min(1).max(60), handed: handedSchema }),
  z.object({ do: z.literal("choose-golfer"), golferId: z.string().max(80) }),
  /** Takes everything of this golfer out of the book for good. `name` must be the golfer's, as a safeguard. */
  z.object({ do: z.literal("delete-golfer"), golferId: z.string().max(80), name: z.string().max(60) }),
  /** The laid station; another club is another baseline. Metres. */
  z.object({
    do: z.literal("set-station"),
    club: clubIdSchema,
    toeLine: z.number().min(0.2).max(1.5),
    heelLine: z.number().min(0.3).max(2),
    tolerance: z.number().min(0.01).max(0.2),
  }),
  /** The free drill only: the band wanted at a checkpoint; null leaves the checkpoint out. */
  z.object({ do: z.literal("set-wanted"), checkpoint: checkpointIdSchema, band: bandIdSchema.nullable() }),
  z.object({ do: z.literal("copy-drill"), drillId: z.string().max(80), name: z.string().trim().min(1).max(60) }),
  /** A drill as JSON text: an import, or an edited copy under its own id. */
  z.object({ do: z.literal("save-drill"), json: z.string().max(100_000) }),
  z.object({ do: z.literal("delete-drill"), drillId: z.string().max(80) }),
]);

export type PracticeCommand = z.infer<typeof practiceCommandSchema>;

/** The books as the session view shows them. */
export const sessionViewSchema = z.object({
  blocks: z.array(
    z.object({
      stage: stageIdSchema,
      at: finite,
      reps: z.int(),
      passed: z.boolean(),
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
  /** Tests without feedback, days later: the real score. Shares of the wanted change still there. */
  retentionTests: z.array(
    z.object({
      kind: retentionKindSchema,
      at: finite,
      places: z.array(
        z.object({ checkpoint: checkpointIdSchema, median: finite, spread, carryOver: finite.nullable() }),
      ),
    }),
  ),
  notes: z.array(z.object({ at: finite, by: z.string(), text: z.string() })),
  feltGaps: z.array(z.object({ repId: z.uuid(), checkpoint: checkpointIdSchema, felt: finite, measured: finite })),
  reps: z.array(
    z.object({
      repId: z.uuid(),
      at: finite,
      starred: z.boolean(),
      voided: z.boolean(),
      /** Why the rep is kept but moves no figure; null where it counts. */
      leftOut: z.string().nullable(),
      places: z.array(z.object({ checkpoint: checkpointIdSchema, y: finite, sd: finite })),
    }),
  ),
});

export type SessionView = z.infer<typeof sessionViewSchema>;
