import type { Configuration } from "@overcue/client-capture/pipeline/configuration";
import { goOverShafts } from "@overcue/client-capture/pipeline/go-over-again";
import { repReadings, type RepReading } from "@overcue/client-capture/pipeline/rep-readings";
import { startAfterShaft, stepAfterShaft, type StepOutput } from "@overcue/client-capture/pipeline/step-after-shaft";
import { toldLive, type ToldLive } from "@overcue/client-capture/pipeline/told-live";
import type { FinishedRep } from "@overcue/client-capture/swing/finish-rep";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { PracticeSession } from "../../scenes/session/practice-session.ts";
import type { Sighting } from "../../scenes/session/simulate-sightings.ts";

export interface ReplayedSession {
  /** As they go into the book. */
  readonly reps: readonly RepReading[];
  readonly live: ToldLive;
}

interface Stepped {
  readonly configuration: Configuration;
  readonly outputs: readonly StepOutput[];
}

/** A session's sightings through every stage after the tracker as they come, with the configuration that they went through. */
export function stepSightings({ scene }: PracticeSession, sightings: Iterable<Sighting>): Stepped {
  const { camera, plan } = scene;
  const settings = plan.golfer.station;
  const shutter = { time: milliseconds(scene.readOutMs), towards: "down" } as const;
  const configuration: Configuration = { settings, camera, calibration: "demo", shutter };
  const picture = { width: camera.width, height: camera.height };
  const outputs: StepOutput[] = [];
  let state = startAfterShaft(configuration);
  for (const { t, body, shaft } of sightings) {
    const stepped = stepAfterShaft(state, {
      t,
      picture,
      body,
      shaft: { now: shaft, lagged: null, turned: { x: 0, y: 0 } },
    });
    state = stepped.state;
    outputs.push(stepped.output);
  }
  return { configuration, outputs };
}

/** The reps of such outputs gone over once more with all of them, as the tracker had the shafts at once. */
export function goOverSteps({ configuration, outputs }: Stepped): readonly FinishedRep[] {
  const shafts = outputs.map(({ shaft }) => shaft.now);
  return goOverShafts(shafts, outputs, configuration).reps;
}

/** A session's sightings through every stage after the tracker, live and then once more with all of them. */
export function replaySightings(session: PracticeSession, sightings: Iterable<Sighting>): ReplayedSession {
  const { configuration, outputs } = stepSightings(session, sightings);
  return {
    reps: goOverSteps({ configuration, outputs }).map((rep) => repReadings(rep, configuration)),
    live: toldLive(outputs, configuration),
  };
}
