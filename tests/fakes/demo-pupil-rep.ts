import { usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { nextDemoRep, type DemoPupil, type PupilsPractice } from "@overcue/client-capture/demo-motion/next-demo-rep";
import type { RepReading } from "@overcue/client-capture/pipeline/rep-readings";
import { replaySightings } from "../accuracy/clock/replay-sightings.ts";
import { sceneOf } from "../scenes/conditions.ts";
import { usualSightErrors } from "../scenes/session/sight-errors.ts";
import { simulateSightings } from "../scenes/session/simulate-sightings.ts";

/** Long enough after impact for the clock to see that the rep is over, milliseconds. */
const afterImpact = 2800;

/**
 * The demo golfer's next rep under the practice's cue as the stages after the tracker measure it: its motion seen by a virtual camera, with simulated answers of tracker
 * and pose model, errors as usual. Null where the clock found no rep in it.
 */
export function demoPupilRep(pupil: DemoPupil, practice: PupilsPractice | null, seed: number): RepReading | null {
  const still = { do: "still", seconds: 1.2 } as const;
  const rep = nextDemoRep(pupil, practice);
  const motion = demoMotion({ golfer: usualGolfer, club: true, ball: true, items: [still, rep, still] });
  const impact = motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact");
  const scene = {
    ...sceneOf(rep.kind === "rehearsal" ? "slow+rod" : "flow 60", 1),
    framesPerSecond: rep.kind === "rehearsal" ? 30 : 60,
    plan: motion.plan,
    fromMs: 0,
    toMs: impact === undefined ? motion.duration * 1000 : impact.t + afterImpact,
  };
  const session = { index: seed, speed: "slow", motion, scene } as const;
  return replaySightings(session, simulateSightings(session, usualSightErrors)).reps[0] ?? null;
}
