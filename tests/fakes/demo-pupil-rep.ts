import { usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { nextDemoRep, type DemoPupil, type PupilsPractice } from "@overcue/client-capture/demo-motion/next-demo-rep";
import type { RepReading } from "@overcue/client-capture/pipeline/rep-readings";
import { replaySightings } from "../accuracy/clock/replay-sightings.ts";
import { sceneOf } from "../scenes/conditions.ts";
import { usualPoseErrors, type PoseErrors } from "../scenes/pose/pose-errors.ts";
import { usualSightErrors, type SightErrors } from "../scenes/session/sight-errors.ts";
import { simulateSightings } from "../scenes/session/simulate-sightings.ts";

/** Tracker and pose model on a clear day: lines and lags as usual, the club's ends and the joints found well. */
const clearBody: PoseErrors = { ...usualPoseErrors, wrist: 0.01, hiddenWrist: 0.02, joint: 0.007 };
const clearDay: SightErrors = {
  ...usualSightErrors,
  gripAlong: 0.01,
  headAlong: 0.01,
  headBias: 0,
  headShortShare: 0,
  wildShare: 0,
};

/**
 * The demo golfer's next rep under the practice's cue as the stages after the tracker measure it: its motion seen by a virtual camera, with simulated answers of tracker
 * and pose model. Null where the clock found no rep in it.
 */
export function demoRepReading(pupil: DemoPupil, practice: PupilsPractice | null, seed: number): RepReading | null {
  const still = { do: "still", seconds: 1.2 } as const;
  const base = sceneOf("flow 60", 1);
  const plan = { golfer: usualGolfer, club: true, ball: true, items: [still, nextDemoRep(pupil, practice), still] };
  const motion = demoMotion(plan);
  const scene = { ...base, plan, pose: clearBody, fromMs: 0, toMs: motion.duration * 1000 };
  const session = { index: seed, speed: "slow", motion, scene } as const;
  return replaySightings(session, simulateSightings(session, clearDay)).reps[0] ?? null;
}
