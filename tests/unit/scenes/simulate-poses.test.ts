import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { landmarkIndex } from "@overcue/client-capture/pipeline/body";
import { describe, expect, it } from "vitest";
import { sceneOf } from "../../scenes/conditions.ts";
import { landmarkPlaces } from "../../scenes/pose/landmark-places.ts";
import { simulatePoses } from "../../scenes/pose/simulate-poses.ts";
import { seededRandom } from "../../scenes/random.ts";
import { see } from "../../scenes/view.ts";

const settings = sceneOf("slow+bare", 3);
const view = { camera: settings.camera, shiftX: 0, shiftY: 0 };
const motion = demoMotion(settings.plan);

describe("simulated poses", () => {
  it("come at their rate and late, with the time of the picture that they are of", () => {
    const poses = simulatePoses(motion, view, settings.dress, settings.pose, 0, seededRandom(1));
    const times = new Set<number>();
    for (let t = 0; t < 5000; t += 1000 / 60) {
      const body = poses.answerAt(t);
      if (!body) continue;
      times.add(body.t);
      expect(t - body.t).toBeGreaterThanOrEqual(settings.pose.delayMs);
    }
    expect(times.size / 5).toBeGreaterThan(settings.pose.perSecond * 0.85);
    expect(times.size / 5).toBeLessThan(settings.pose.perSecond * 1.15);
  });

  it("miss the trail wrist by 4 to 15 cm at times, as the real model was seen to, and smoothly in time", () => {
    const poses = simulatePoses(motion, view, settings.dress, settings.pose, 0, seededRandom(2));
    const misses: number[] = [];
    for (let t = 200; t < motion.duration * 1000; t += 50) {
      const body = poses.answerAt(t);
      const landmark = body?.landmarks[landmarkIndex.rightWrist];
      if (!body || !landmark) continue;
      const place = landmarkPlaces(motion.at(body.t / 1000), "right")[landmarkIndex.rightWrist];
      if (!place) throw new Error("no wrist");
      const seen = see(view, place);
      misses.push((Math.hypot(landmark.x - seen.x, landmark.y - seen.y) * seen.depth) / view.camera.focal);
    }
    const median = misses.toSorted((a, b) => a - b)[misses.length >> 1] ?? NaN;
    expect(median).toBeGreaterThan(0.02);
    expect(median).toBeLessThan(0.1);
    const steps = misses.slice(1).map((miss, index) => Math.abs(miss - (misses[index] ?? 0)));
    const typical = steps.toSorted((a, b) => a - b)[steps.length >> 1] ?? NaN;
    expect(typical).toBeLessThan(median);
  });

  it("hide the lead wrist behind the body or the trail arm for a part of the swing", () => {
    const poses = simulatePoses(motion, view, settings.dress, settings.pose, 0, seededRandom(3));
    let hidden = 0;
    let count = 0;
    for (let t = 200; t < 5000; t += 100) {
      const seen = poses.answerAt(t)?.landmarks[landmarkIndex.leftWrist]?.visibility;
      if (seen === undefined) continue;
      count++;
      if (seen < 0.5) hidden++;
    }
    expect(hidden / count).toBeGreaterThan(0.1);
  });
});
