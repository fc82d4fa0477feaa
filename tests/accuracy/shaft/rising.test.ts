import { expect, test } from "vitest";
import { sceneOf } from "../../scenes/conditions.ts";
import { figuresOf } from "./figures.ts";
import { judgeScene } from "./judge-scene.ts";

test("T29 with a rod along it, a shaft that comes out of end-on while the hands go up has its head up", async () => {
  // A scene that is not among the judged ones. By what the ends look like alone 85 % are told at once.
  const { now } = await judgeScene(sceneOf("slow+rod", 106), 106, {
    hough: null,
    clock: () => 0,
    mostFrames: Infinity,
    effort: "live",
    rodColour: null,
  });
  const figures = figuresOf(now);
  expect(figures.trackedShare).toBeGreaterThan(0.865);
  expect(figures.within5).toBeGreaterThan(0.99);
});
