import { describe, expect, it } from "vitest";
import { bodyInWorld, startBody } from "@overcue/client-capture/pipeline/body-in-world";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { sceneOf } from "../../scenes/conditions.ts";
import { simulatePoses } from "../../scenes/pose/simulate-poses.ts";
import { namedRandom } from "../../scenes/random.ts";

/** Errors of the hands' place along the target line in their own stated standard deviations, and in metres, from address to impact. */
function depthErrors(seed: number): { inSds: number; metres: number }[] {
  const scene = sceneOf(seed % 2 === 0 ? "slow+bare" : "full 60 1/500", seed);
  const motion = demoMotion(scene.plan);
  const view = { camera: scene.camera, shiftX: 0, shiftY: 0 };
  const poses = simulatePoses(motion, view, scene.dress, scene.pose, 0, namedRandom(seed, "poses"));
  const from = motion.checkpoints[0]?.t ?? 0;
  const to = motion.checkpoints.at(-1)?.t ?? 0;
  let state = startBody;
  const errors: { inSds: number; metres: number }[] = [];
  for (let t = 0; t < to; t += 50) {
    const body = poses.answerAt(t);
    const placed = body && bodyInWorld(state, body, scene.camera, scene.plan.golfer.station);
    state = placed?.state ?? state;
    const { club } = motion.at(((body?.t ?? 0) - scene.pose.smoothingMs) / 1000);
    if (!placed?.output || !club || t < from) continue;
    const { value, sd } = placed.output.handsX;
    errors.push({ inSds: (value - club.grip.x) / sd, metres: value - club.grip.x });
  }
  return errors;
}

describe("the hands' depth from simulated poses", () => {
  it("F3 stays within what it is said to: 95 % within two sds, and 15 cm off as a rule at most", () => {
    const errors = Array.from({ length: 12 }, (_, seed) => depthErrors(seed + 1)).flat();
    expect(errors.length).toBeGreaterThan(300);
    expect(errors.filter(({ inSds }) => Math.abs(inSds) <= 1.96).length / errors.length).toBeGreaterThan(0.95);
    const rms = Math.sqrt(errors.reduce((sum, { metres }) => sum + metres ** 2, 0) / errors.length);
    expect(rms).toBeLessThan(0.15);
  });
});
