import { degrees, metres, radians, radiansFromDegrees } from "@overcue/shared-geometry/units";
import type { BandId, BandLayout } from "@overcue/shared-geometry/bands";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import type { Aim, PracticeState, SessionView } from "@overcue/shared-geometry/wire/practice";
import type { LiveCheckpoint, Rep } from "@overcue/shared-geometry/wire/rep";
import { bandAt } from "@overcue/shared-geometry/band-interval";

/** An invented golfer's practice, for screens and their tests. */

export const sceneLayout: BandLayout = { toeLine: metres(0.575), heelLine: metres(0.875), tolerance: metres(0.05) };

export const demoAims: readonly Aim[] = [
  {
    checkpoint: "arm-level-back",
    wanted: { from: -0.05, to: 0.05 },
    felt: { from: 0.525, to: 0.625 },
    wantedBand: "ball-line",
    feltBand: "toe-line",
    exaggerateBy: 0.575,
    cap: 0.7,
    baseline: { median: -0.31, spread: 0.08, sd: 0.03, reps: 10 },
    carryOver: { value: 0.58, sd: 0.07 },
    reason: "The club goes back too flat: it has to feel upright.",
  },
  {
    checkpoint: "arm-level-down",
    wanted: { from: -0.05, to: 0.05 },
    felt: { from: -0.4, to: -0.2 },
    wantedBand: "ball-line",
    feltBand: "beyond-ball",
    exaggerateBy: -0.3,
    cap: -0.6,
    baseline: { median: 0.42, spread: 0.07, sd: 0.03, reps: 10 },
    carryOver: { value: 0.71, sd: 0.06 },
    reason: "It comes down too steep: it has to feel flat.",
  },
];

export function practiceState(changes: Partial<PracticeState> = {}): PracticeState {
  return {
    revision: 1,
    golfer: { id: "sam", name: "Sam (invented)", handed: "right" },
    golfers: [{ id: "sam", name: "Sam (invented)", handed: "right" }],
    club: "7-iron",
    drill: {
      id: "two-points",
      name: "Upright back, flat down",
      summary: "The butt end points past the ball line going back and beyond the ball coming down.",
      source: "common practice, no source",
      layOut: ["One stick on the ball line, one at the toes, one at the heels."],
      say: ["Steep up, shallow down."],
      cautions: ["Slow rehearsals only with the rod."],
      corridor: null,
    },
    drills: [
      { id: "two-points", name: "Upright back, flat down", builtIn: true },
      { id: "takeaway", name: "Quiet takeaway", builtIn: true },
    ],
    layout: sceneLayout,
    stage: "slow-rehearsal",
    mode: "practice",
    aims: [...demoAims],
    proposals: [],
    cueMode: "adaptive",
    cueLocked: false,
    rodOn: true,
    paused: false,
    muted: true,
    view: "live",
    feedback: "every-rep",
    repsInBlock: 4,
    blockSize: 10,
    repsInStage: 24,
    repsInSession: 34,
    nextRepAnswered: true,
    feltQuestion: false,
    feltAnswerWanted: null,
    feltAnswerCheckpoint: null,
    retentionOffer: null,
    verdict: null,
    pattern: { name: "flat-to-steep", odds: 0.93 },
    advice: ["Carry-over is 0.6 and rising: keep the cue."],
    lastChange: null,
    ...changes,
  };
}

export function captureState(changes: Partial<CaptureState> = {}): CaptureState {
  return {
    source: "camera",
    running: true,
    picture: { width: 720, height: 1280 },
    framesPerSecond: 60,
    posesPerSecond: 18,
    failedFrames: 0,
    droppedMessages: 0,
    unsentReps: 0,
    delegate: "GPU",
    calibration: "station",
    warnings: [],
    battery: 0.8,
    checks: {},
    ...changes,
  };
}

type BandDecision = Extract<Estimate["readOuts"]["buttPoint"], { defined: true }>["band"];

export const sure = (band: BandId, odds = 0.97): BandDecision => ({ decided: true, band, odds });
export const unsure = (first: BandId, second: BandId): BandDecision => ({
  decided: false,
  candidates: [first, second],
  odds: [0.55, 0.4],
});

export interface LiveMoment {
  /** Butt point on the ground, metres, and its band. */
  readonly x: number;
  readonly y: number;
  readonly band: BandDecision;
  readonly sdX?: number;
  readonly sdY?: number;
  readonly checkpoint?: CheckpointId | null;
  readonly phase?: Estimate["phase"];
  readonly calibration?: Estimate["calibration"];
}

/** A shaft with the lead arm level, whose line out of the butt end meets the ground at (x, y). */
export function liveEstimate(sequence: number, capturedAt: number, moment: LiveMoment): Estimate {
  const { x, y, band, sdX = 0.02, sdY = 0.03, checkpoint = null, phase = "back", calibration = "station" } = moment;
  const grip = { x: -0.35, y: 0.62, z: 1.25 };
  const away = { x: grip.x - x, y: grip.y - y, z: grip.z };
  const length = Math.hypot(away.x, away.y, away.z);
  const toHead = { x: away.x / length, y: away.y / length, z: away.z / length };
  const scalar = (value: number, sd: number) => ({ defined: true as const, value, sd });
  return {
    sequence,
    capturedAt,
    picture: { width: 720, height: 1280 },
    shaft: {
      status: "tracked",
      grip: { x: 400, y: 600 },
      head: { x: 520, y: 300 },
      angle: radiansFromDegrees(degrees(-68)),
      sd: radians(0.01),
    },
    hands: "seen",
    calibration,
    world: { grip, toHead },
    readOuts: {
      buttPoint: { defined: true, x, y, sdX, sdY, band },
      headPoint: { defined: false, reason: "not-read-here" },
      elevation: scalar(Math.asin(toHead.z), 0.02),
      direction: scalar(Math.atan2(toHead.y, toHead.x), 0.02),
      handHeight: scalar(grip.z, 0.02),
    },
    phase,
    checkpoint,
    framesPerSecond: 60,
  };
}

/** The shaft gone, and why. */
export function lostEstimate(
  sequence: number,
  capturedAt: number,
  reason: Extract<Estimate["shaft"], { status: "lost" }>["reason"],
): Estimate {
  const nothing = { defined: false as const, reason: "shaft-not-seen" as const };
  return {
    ...liveEstimate(sequence, capturedAt, { x: 0, y: 0, band: sure("ball-line") }),
    shaft: { status: "lost", reason },
    hands: "lost",
    world: null,
    readOuts: {
      buttPoint: nothing,
      headPoint: nothing,
      elevation: nothing,
      direction: nothing,
      handHeight: nothing,
    },
    phase: "unknown",
  };
}

export const repIds = [
  "0b7f9d3e-1c64-4c3f-9a55-6f7a3f0f6a01",
  "0b7f9d3e-1c64-4c3f-9a55-6f7a3f0f6a02",
  "0b7f9d3e-1c64-4c3f-9a55-6f7a3f0f6a03",
  "0b7f9d3e-1c64-4c3f-9a55-6f7a3f0f6a04",
  "0b7f9d3e-1c64-4c3f-9a55-6f7a3f0f6a05",
] as const;

/** A checkpoint with the butt point at (x, y). */
export function readingAt(
  checkpoint: CheckpointId,
  at: number,
  y: number,
  band: BandDecision,
  x = -0.1,
): LiveCheckpoint["reading"] {
  return { checkpoint, at, sdMs: 8, readOuts: liveEstimate(0, at, { x, y, band }).readOuts };
}

/** A checkpoint told while a rep happens. */
export const checkpointTold = (
  repId: string,
  reading: LiveCheckpoint["reading"],
  corrects = false,
): LiveCheckpoint => ({
  repId,
  reading,
  calibration: "station",
  corrects,
});

/** A finished rep with its butt points at lead arm level, back and down. */
export function repOf(id: string, endedAt: number, back: number, down: number): Rep {
  const decided = (y: number): BandDecision => sure(bandAt(y, sceneLayout));
  return {
    id,
    kind: "rehearsal",
    startedAt: endedAt - 4000,
    endedAt,
    handed: "right",
    calibration: "station",
    checkpoints: [
      readingAt("arm-level-back", endedAt - 2500, back, decided(back)),
      readingAt("arm-level-down", endedAt - 1200, down, decided(down), 0.05),
    ],
    complete: true,
    missing: [],
    tempo: { backswingSeconds: 1.6, downswingSeconds: 0.9, ratio: 1.8 },
    trackedShare: 0.97,
    trajectory: [],
  };
}

/** Six blocks of an invented change, the last tests and the answers to what it felt like. */
export function demoSessionView(): SessionView {
  const carry = [0.18, 0.31, 0.52, 0.47, 0.7, 0.82];
  const stages = ["slow-rehearsal", "slow-rehearsal", "slow-rehearsal", "flow", "flow", "added-speed"] as const;
  const start = 1_790_000_000_000;
  return {
    blocks: stages.map((stage, index) => ({
      stage,
      at: start + index * 600_000,
      reps: 5,
      passed: index === 2,
      places: [
        {
          checkpoint: "arm-level-back",
          median: -0.31 + 0.36 * (carry[index] ?? 0),
          spread: 0.09 - 0.008 * index,
          carryOver: carry[index] ?? 0,
          exaggerateBy: 0.6 - 0.04 * index,
        },
        {
          checkpoint: "arm-level-down",
          median: 0.42 - 0.4 * (carry[index] ?? 0),
          spread: 0.11 - 0.01 * index,
          carryOver: Math.min(1, 0.12 + (carry[index] ?? 0)),
          exaggerateBy: -0.45 + 0.03 * index,
        },
      ],
    })),
    retentionTests: [
      {
        kind: "next-day",
        at: start - 86_400_000,
        places: [{ checkpoint: "arm-level-back", median: -0.12, spread: 0.07, carryOver: 0.55 }],
      },
    ],
    notes: [{ at: start, by: "Coach Kim (invented)", text: "Better when the first move is slow." }],
    feltGaps: repIds.map((repId, index) => ({
      repId,
      checkpoint: "arm-level-back",
      felt: 0.1 + 0.12 * index,
      measured: 0.05 + 0.1 * index + (index % 2 === 0 ? 0.06 : -0.05),
    })),
    reps: repIds.map((repId, index) => ({
      repId,
      at: start + index * 30_000,
      starred: index === 1,
      voided: index === 3,
      leftOut: null,
      places: [
        { checkpoint: "arm-level-back", y: 0.3 - 0.06 * index, sd: 0.03 },
        { checkpoint: "arm-level-down", y: 0.12 - 0.05 * index, sd: 0.02 },
      ],
    })),
  };
}
