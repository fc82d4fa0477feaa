import { expect, test } from "vitest";
import { sceneOf } from "../../scenes/conditions.ts";
import { figuresOf } from "./figures.ts";
import { judgeScene } from "./judge-scene.ts";
import { tapRod } from "./tap-rod.ts";

test("T53 with a green rod's colour known the horizon behind the hands is not taken for the shaft", async () => {
  // A scene that is not among the judged ones: a black shaft, a green rod, a horizon at the hands' height.
  const scene = sceneOf("slow+rod", 105);
  const rodColour = tapRod(scene, 105);
  expect(rodColour).not.toBeNull();
  const { now } = await judgeScene(scene, 105, {
    hough: null,
    clock: () => 0,
    mostFrames: 60,
    effort: "live",
    rodColour,
  });
  const figures = figuresOf(now);
  expect(figures.trackedShare).toBeGreaterThan(0.8);
  expect(figures.within5).toBe(1);
});
