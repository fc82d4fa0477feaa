import { bodyInWorld, startBody, type BodyInWorld, type BodyState } from "./body-in-world.ts";
import type { Body } from "./body.ts";
import { cameraFor } from "./camera-for.ts";
import type { Configuration } from "./configuration.ts";
import { handsStatus, type HandsStatus } from "./hands-status.ts";
import { swingSample } from "./swing-sample.ts";
import { liftToWorld, startLift, type LiftState } from "./lift-to-world.ts";
import { readBands } from "./read-bands.ts";
import { startShaftTracker, trackShaft, type ShaftOutput, type ShaftTrackerState } from "../shaft/track-shaft.ts";
import { runSwingClock, startSwingClock, type SwingClockOutput, type SwingClockState } from "../swing/swing-clock.ts";
import type { Picture } from "../picture/picture.ts";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import type { Calibration } from "@overcue/shared-geometry/camera";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

/** What one picture brings. `body` is the newest answer of the pose model, mostly of an earlier picture. */
export interface StepInput {
  readonly picture: Picture;
  readonly t: Milliseconds;
  readonly body: Body | null;
}

export interface StepState {
  readonly configuration: Configuration;
  readonly body: BodyState;
  readonly shaft: ShaftTrackerState;
  readonly lift: LiftState;
  readonly clock: SwingClockState;
  /** Whether the club stood still outside of a rep at the last picture. */
  readonly resting: boolean;
}

export interface StepOutput {
  readonly t: Milliseconds;
  readonly picture: { readonly width: number; readonly height: number };
  readonly body: Body | null;
  readonly hands: HandsStatus;
  readonly inWorld: BodyInWorld | null;
  readonly shaft: ShaftOutput;
  readonly world: ShaftInWorld | null;
  readonly calibration: Calibration;
  readonly swing: SwingClockOutput;
  readonly readOuts: ReadOuts;
}

/** `keepFor`: how long what each picture showed is kept for going over it again, milliseconds; infinite for a clip. */
export function startStep(configuration: Configuration, keepFor: Milliseconds): StepState {
  return {
    configuration,
    body: startBody,
    shaft: startShaftTracker({ handed: configuration.settings.handed, keepEvidence: keepFor }),
    lift: startLift,
    clock: startSwingClock(gripToHead(configuration.settings)),
    resting: false,
  };
}

/** One picture through every stage, in order: body, shaft in the picture, shaft in the world, swing clock, read-outs. */
export function step(state: StepState, { picture, t, body }: StepInput): { state: StepState; output: StepOutput } {
  const { settings } = state.configuration;
  const camera = cameraFor(state.configuration, picture);
  const hands = handsStatus(body, t);
  const inWorld = body === null ? null : bodyInWorld(state.body, body, camera, settings);
  const shaft = trackShaft(state.shaft, { picture, t, body });
  const world = liftToWorld(
    state.lift,
    { shaft: shaft.output.now, body: inWorld?.output ?? null, resting: state.resting },
    state.configuration.spread ?? camera,
    settings,
  );
  const swing = runSwingClock(state.clock, swingSample(t, shaft.output.now, world.output, inWorld?.output ?? null));
  const readOuts = readBands(shaft.output.now.status === "lost" ? null : world.output, settings);
  return {
    state: {
      configuration: state.configuration,
      body: inWorld?.state ?? state.body,
      shaft: shaft.state,
      lift: world.state,
      clock: swing.state,
      resting: swing.output.phase === "still",
    },
    output: {
      t,
      picture: { width: picture.width, height: picture.height },
      body,
      hands,
      inWorld: inWorld?.output ?? null,
      shaft: shaft.output,
      world: world.output,
      calibration: state.configuration.calibration,
      swing: swing.output,
      readOuts,
    },
  };
}
