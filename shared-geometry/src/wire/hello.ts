import { z } from "zod";

export const roles = ["capture", "display", "coach"] as const;
export type Role = (typeof roles)[number];

/** What a page presents in the socket handshake before anything is served. */
export const helloSchema = z.object({
  role: z.enum(roles),
  /** From the pairing address's fragment: 128 random bits or more in base64url, one per run. */
  secret: z.string().min(22).max(128),
  protocol: z.int(),
  /** Shown to the others: "Anna's phone". */
  name: z.string().max(60).default(""),
});

export type Hello = z.infer<typeof helloSchema>;

/** Who is connected, told to all at each change. */
export const peersSchema = z.object({ capture: z.int(), display: z.int(), coach: z.int() });
export type Peers = z.infer<typeof peersSchema>;

/** How the phone is doing; told a few times a second at most. */
export const captureStateSchema = z.object({
  source: z.enum(["none", "camera", "clip", "demo"]),
  running: z.boolean(),
  picture: z.object({ width: z.int(), height: z.int() }).nullable(),
  framesPerSecond: z.number().nonnegative(),
  posesPerSecond: z.number().nonnegative(),
  /** Pictures that were looked at, whatever was found in them; that came and nobody had time for; that could not be read. */
  lookedFrames: z.int().nonnegative().optional(),
  missedFrames: z.int().nonnegative().optional(),
  failedFrames: z.int().nonnegative(),
  droppedMessages: z.int().nonnegative(),
  unsentReps: z.int().nonnegative(),
  delegate: z.enum(["GPU", "CPU"]).nullable(),
  calibration: z.enum(["station", "demo", "uncalibrated", "suspect"]),
  /** Sentences that the golfer should read, most urgent first. */
  warnings: z.array(z.string().max(300)).max(10),
  /** What the watch over the sticks last had to say, as a sentence; empty where there is nothing. */
  stationNews: z.string().max(300).optional(),
  battery: z.number().min(0).max(1).nullable(),
  /** Set-up checks by id; a screen has words for each. */
  checks: z.record(z.string().max(40), z.enum(["ok", "not-yet", "problem", "unknown"])),
  /** The phone's own words for a check, with the number that it measured, and what to do; they go before a screen's. */
  said: z.record(z.string().max(40), z.object({ words: z.string().max(160), todo: z.string().max(300) })).optional(),
});
export type CaptureState = z.infer<typeof captureStateSchema>;
