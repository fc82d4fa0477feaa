import { bandIds } from "@overcue/shared-geometry/bands";
import { stationLines } from "@overcue/shared-geometry/station";
import { z } from "zod";

/** The checkpoints at which a place on the ground is read, in the order of the swing. */
export const placeCheckpointIds = [
  "takeaway",
  "shaft-level-back",
  "arm-level-back",
  "arm-level-down",
  "shaft-level-down",
] as const;

export type PlaceCheckpoint = (typeof placeCheckpointIds)[number];

const sentence = z.string().trim().min(1).max(300);

const boundSchema = z.strictObject({
  line: z.enum(stationLines).describe("The stick that this end is measured from."),
  offset: z
    .number()
    .min(-2)
    .max(2)
    .describe("Metres from the stick: positive towards the heels, negative beyond the ball."),
});

const stretchSchema = z.union([
  z.strictObject({ band: z.enum(bandIds) }).describe("A whole band of the ground."),
  z.strictObject({ from: boundSchema, to: boundSchema }).describe("A stretch between two ends, far end first."),
]);

const checkpointSchema = z.strictObject({
  checkpoint: z.enum(placeCheckpointIds),
  wanted: stretchSchema.describe("Where the place shall lie in reality."),
  cue: z.strictObject({
    direction: z
      .enum(["towards-heels", "beyond-ball", "either", "none"])
      .describe(
        "Which way the cue exaggerates; either: away from wherever the golfer's baseline lies; none: the wanted place itself is the cue.",
      ),
    usual: stretchSchema.describe("The cue before this golfer's baseline is known."),
  }),
  say: sentence.describe("One sentence about club and sticks."),
});

/** A drill as people copy, edit, import and export it. The published JSON schema is generated from this. */
export const drillSchema = z
  .strictObject({
    format: z.literal("overcue-drill/1"),
    id: z
      .string()
      .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case letters, digits and single hyphens")
      .max(80),
    name: z.string().trim().min(1).max(60),
    summary: sentence,
    source: sentence.describe("Where the drill's places come from; 'common practice, no source' where so."),
    suits: z.enum(["flat-to-steep", "steep-to-flat", "any"]),
    checkpoints: z
      .array(checkpointSchema)
      .max(placeCheckpointIds.length)
      .refine((list) => new Set(list.map(({ checkpoint }) => checkpoint)).size === list.length, {
        message: "names a checkpoint twice",
      }),
    corridor: stretchSchema
      .nullable()
      .describe("Where the club head stays from address until the hands pass the trail thigh; null for none."),
    layOut: z.array(sentence).max(10).describe("What to lay on the ground, one thing a sentence."),
    say: z.array(sentence).max(10).describe("What to say: about club and sticks, never about body parts."),
    cautions: z.array(sentence).max(10),
  })
  .describe("A practice drill: what is wanted in reality at each checkpoint and which way the cue exaggerates.");

export type Drill = z.infer<typeof drillSchema>;
export type DrillCheckpoint = Drill["checkpoints"][number];
export type Stretch = z.infer<typeof stretchSchema>;
