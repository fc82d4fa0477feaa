import { exactCamera } from "@overcue/shared-geometry/camera-spread";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import type { Calibration } from "@overcue/shared-geometry/camera";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { ShaftOutput } from "../shaft/track-shaft.ts";
import { runSwingClock, startSwingClock, type SwingClockOutput, type SwingClockState } from "../swing/swing-clock.ts";
import { bodyInWorld, startBody, type BodyInWorld, type BodyState } from "./body-in-world.ts";
import type { Body } from "./body.ts";
import { cameraFor } from "./camera-for.ts";
import type { Configuration } from "./configuration.ts";
import { gripRate, gripRateOver } from "./grip-rate.ts";
import { handsStatus, type HandsStatus } from "./hands-status.ts";
import { liftAlone } from "./lift-alone.ts";
import { liftToWorld, startLift, type LiftState } from "./lift-to-world.ts";
import { readBands } from "./read-bands.ts";
import { swingSample } from "./swing-sample.ts";
import { undoRollingShutter } from "./undo-rolling-shutter.ts";

/** What the stages after the tracker take of one picture: its size, its shaft, and the pose model's newest answer. */
export interface SeenShaft {
  readonly t: Milliseconds;
  readonly picture: { readonly width: number; readonly height: number };
  readonly body: Body | null;
  readonly shaft: ShaftOutput;
}

export interface AfterShaftState {
  readonly configuration: Configuration;
  readonly body: BodyState;
  readonly lift: LiftState;
  readonly clock: SwingClockState;
  /** Whether the club stood still outside of a rep at the last picture. */
  readonly resting: boolean;
  /** The shafts of the last pictures, oldest first. */
  readonly recent: readonly ShaftInImage[];
}

export interface StepOutput extends SeenShaft {
  readonly hands: HandsStatus;
  readonly inWorld: BodyInWorld | null;
  readonly world: ShaftInWorld | null;
  readonly calibration: Calibration;
  readonly swing: SwingClockOutput;
  readonly readOuts: ReadOuts;
}

export function startAfterShaft(configuration: Configuration): AfterShaftState {
  return {
    configuration,
    body: startBody,
    lift: startLift,
    clock: startSwingClock(gripToHead(configuration.settings)),
    resting: false,
    recent: [],
  };
}

/** A shaft found in a picture through the stages that need no pixels, in order: body and shaft in the world, swing clock, read-outs. */
export function stepAfterShaft(
  state: AfterShaftState,
  { t, picture, body, shaft }: SeenShaft,
): { readonly state: AfterShaftState; readonly output: StepOutput } {
  const { configuration } = state;
  const { settings } = configuration;
  const camera = cameraFor(configuration, picture);
  const inWorld = body === null ? null : bodyInWorld(state.body, body, camera, settings);
  const through = configuration.spread ?? exactCamera(camera);
  const recent = [...state.recent.filter((before) => t - before.t <= 2 * gripRateOver), shaft.now];
  const seen = undoRollingShutter(shaft.now, gripRate(recent), {
    shutter: configuration.shutter ?? null,
    interval: t - (state.recent.at(-1)?.t ?? Number.NEGATIVE_INFINITY),
    width: picture.width,
    height: picture.height,
  });
  const sighting = { shaft: seen, body: inWorld?.output ?? null, resting: state.resting };
  const world = liftToWorld(state.lift, sighting, through, settings);
  const alone = liftAlone(sighting, through, settings, world.output);
  const swing = runSwingClock(
    state.clock,
    swingSample(t, seen, world.output, sighting.body, alone, configuration.camera),
  );
  return {
    state: {
      configuration,
      body: inWorld?.state ?? state.body,
      lift: world.state,
      clock: swing.state,
      resting: swing.output.phase === "still",
      recent,
    },
    output: {
      t,
      picture: { width: picture.width, height: picture.height },
      body,
      hands: handsStatus(body, t),
      inWorld: inWorld?.output ?? null,
      shaft,
      world: world.output,
      calibration: configuration.calibration,
      swing: swing.output,
      readOuts: readBands(shaft.now.status === "lost" ? null : world.output, configuration),
    },
  };
}
