import { randomUUID } from "node:crypto";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import type { LiveCheckpoint, Rep } from "@overcue/shared-geometry/wire/rep";

const notRead = { defined: false, reason: "not-read-here" } as const;

const readOuts: Estimate["readOuts"] = {
  buttPoint: {
    defined: true,
    x: 0.1,
    y: 0.58,
    sdX: 0.02,
    sdY: 0.03,
    band: { decided: true, band: "toe-line", odds: 0.93 },
  },
  headPoint: notRead,
  elevation: { defined: true, value: -0.9, sd: 0.01 },
  direction: { defined: true, value: 0.2, sd: 0.02 },
  handHeight: { defined: true, value: 1.25, sd: 0.01 },
};

export function sampleEstimate(sequence: number, capturedAt = 0): Estimate {
  return {
    sequence,
    capturedAt,
    picture: { width: 720, height: 1280 },
    shaft: { status: "tracked", grip: { x: 360, y: 700 }, head: { x: 200, y: 500 }, angle: -2.2, sd: 0.01 },
    hands: "seen",
    calibration: "demo",
    world: { grip: { x: 0, y: 0.4, z: 1.2 }, toHead: { x: 0, y: -0.6, z: 0.8 } },
    readOuts,
    phase: "back",
    checkpoint: "arm-level-back",
    framesPerSecond: 60,
  };
}

export function sampleCheckpoint(repId: string = randomUUID()): LiveCheckpoint {
  return {
    repId,
    reading: { checkpoint: "arm-level-back", at: 1000, sdMs: 4, readOuts },
    calibration: "demo",
    corrects: false,
  };
}

/** @param points Length of its trajectory. */
export function sampleRep(id: string = randomUUID(), points = 3): Rep {
  return {
    id,
    kind: "full",
    startedAt: 1000,
    endedAt: 3000,
    handed: "right",
    calibration: "demo",
    checkpoints: [{ checkpoint: "arm-level-back", at: 1800, sdMs: 4, readOuts }],
    complete: true,
    missing: [],
    tempo: { backswingSeconds: 0.9, downswingSeconds: 0.3, ratio: 3 },
    trackedShare: 0.97,
    trajectory: Array.from({ length: points }, (_, index) => [1000 + index, 0.1, 0.4, 1.2, 0.123456789, -0.987654321]),
  };
}

export function sampleCaptureState(): CaptureState {
  return {
    source: "demo",
    running: true,
    picture: { width: 720, height: 1280 },
    framesPerSecond: 60,
    posesPerSecond: 20,
    failedFrames: 0,
    droppedMessages: 0,
    unsentReps: 0,
    delegate: "CPU",
    calibration: "demo",
    warnings: [],
    battery: null,
    checks: { paired: "ok" },
  };
}
