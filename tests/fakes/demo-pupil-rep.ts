import { usualGolfer, type DemoPlan } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { nextDemoRep, type DemoPupil, type PupilsPractice } from "@overcue/client-capture/demo-motion/next-demo-rep";
import type { RepReading } from "@overcue/client-capture/pipeline/rep-readings";
import { replaySightings } from "../accuracy/clock/replay-sightings.ts";
import { sceneOf } from "../scenes/conditions.ts";
import { usualSightErrors } from "../scenes/session/sight-errors.ts";
import { simulateSightings } from "../scenes/session/simulate-sightings.ts";

/** Long enough after impact for the clock to see that the rep is over, milliseconds. */
const afterImpact = 2800;

/** Few enough pictures a second that a whole way through the ladder is reckoned in minutes. */
const slowly = { ...sceneOf("slow+rod", 1), framesPerSecond: 20 };
const quickly = { ...sceneOf("flow 60", 1), framesPerSecond: 30 };

/** While the cue stays, so does the motion. */
const motions = new Map<string, DemoMotion>();

function motionOf(plan: DemoPlan): DemoMotion {
  const key = JSON.stringify(plan);
  const motion = motions.get(key) ?? demoMotion(plan);
  motions.set(key, motion);
  return motion;
}

/**
 * The demo golfer's next rep under the practice's cue as the stages after the tracker measure it: its motion seen by a virtual camera, with simulated answers of tracker
 * and pose model, errors as usual. Null where the clock found no rep in it.
 */
export function demoPupilRep(pupil: DemoPupil, practice: PupilsPractice | null, seed: number): RepReading | null {
  const still = { do: "still", seconds: 1.2 } as const;
  const rep = nextDemoRep(pupil, practice);
  const motion = motionOf({ golfer: usualGolfer, club: true, ball: true, items: [still, rep, still] });
  const impact = motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact");
  const scene = {
    ...(rep.kind === "rehearsal" ? slowly : quickly),
    plan: motion.plan,
    fromMs: 0,
    toMs: impact === undefined ? motion.duration * 1000 : impact.t + afterImpact,
  };
  const session = { index: seed, speed: "slow", motion, scene } as const;
  return replaySightings(session, simulateSightings(session, usualSightErrors)).reps[0] ?? null;
}
