import { z } from "zod";
import { bandIds } from "../bands.ts";
import { checkpointIds } from "../checkpoints.ts";

const finite = z.number();
const spread = z.number().nonnegative();
const odds = z.number().min(0).max(1);

export const imagePointSchema = z.object({ x: finite, y: finite });
export const bandIdSchema = z.enum(bandIds);
export const checkpointIdSchema = z.enum(checkpointIds);
export const calibrationSchema = z.enum(["station", "demo", "uncalibrated", "suspect"]);

export const bandDecisionSchema = z.discriminatedUnion("decided", [
  z.object({ decided: z.literal(true), band: bandIdSchema, odds }),
  z.object({
    decided: z.literal(false),
    candidates: z.tuple([bandIdSchema, bandIdSchema]).readonly(),
    odds: z.tuple([odds, odds]).readonly(),
  }),
]);

const undefinedReadOut = z.object({
  defined: z.literal(false),
  reason: z.enum([
    "not-read-here",
    "too-flat",
    "points-up",
    "shaft-not-seen",
    "no-camera",
    "too-fast",
    "too-uncertain",
  ]),
});

const groundReadOut = z.discriminatedUnion("defined", [
  z.object({ defined: z.literal(true), x: finite, y: finite, sdX: spread, sdY: spread, band: bandDecisionSchema }),
  undefinedReadOut,
]);

const scalarReadOut = z.discriminatedUnion("defined", [
  z.object({ defined: z.literal(true), value: finite, sd: spread }),
  undefinedReadOut,
]);

export const readOutsSchema = z.object({
  buttPoint: groundReadOut,
  headPoint: groundReadOut,
  elevation: scalarReadOut,
  direction: scalarReadOut,
  handHeight: scalarReadOut,
});

const shaftReasonSchema = z.enum([
  "no-hands",
  "walking",
  "no-line-found",
  "ambiguous",
  "end-on",
  "blurred-away",
  "out-of-picture",
  "hands-hidden",
  "starting",
]);

const seenShaft = { grip: imagePointSchema, head: imagePointSchema.nullable(), angle: finite, sd: spread };

export const wireShaftSchema = z.discriminatedUnion("status", [
  z.object({ status: z.literal("tracked"), ...seenShaft }),
  z.object({ status: z.literal("predicted"), reason: shaftReasonSchema, ...seenShaft }),
  z.object({ status: z.literal("lost"), reason: shaftReasonSchema }),
]);

/** One live estimate, sent as it is made and dropped where the network lags: the next one is fresher. */
export const estimateSchema = z.object({
  sequence: z.int().nonnegative(),
  /** When the picture was taken, milliseconds on the relay's clock. */
  capturedAt: finite,
  picture: z.object({ width: z.int().positive(), height: z.int().positive() }),
  shaft: wireShaftSchema,
  /** How the hands' place is known: from a pose of this moment, predicted since one, or not at all. */
  hands: z.enum(["seen", "predicted", "lost"]),
  calibration: calibrationSchema,
  /** World: grip (metres) and unit direction from grip to head; null where the shaft could not be lifted. */
  world: z
    .object({
      grip: z.object({ x: finite, y: finite, z: finite }),
      toHead: z.object({ x: finite, y: finite, z: finite }),
    })
    .nullable(),
  readOuts: readOutsSchema,
  /** The part of the swing this moment belongs to, where the swing clock knows one. */
  phase: z.enum(["still", "back", "top", "down", "through", "hold", "unknown"]),
  /** The checkpoint last passed in the rep under way, or held. */
  checkpoint: checkpointIdSchema.nullable(),
  framesPerSecond: spread,
});

export type Estimate = z.infer<typeof estimateSchema>;
export type WireShaft = z.infer<typeof wireShaftSchema>;
