import { expect, it } from "vitest";
import { usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { whileHigh } from "@overcue/client-capture/swing/while-high";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { heldRep, timeOf } from "../../fakes/clock-run.ts";
import { noNoise, trueSamples } from "../../fakes/true-samples.ts";
import { seededRandom } from "../../scenes/random.ts";

it("K2.7 the hands are high about the top and not while the club is held on its way down", () => {
  const motion = demoMotion({
    golfer: usualGolfer,
    club: true,
    ball: true,
    items: [{ do: "still", seconds: 1 }, heldRep("arm-level-down", 1.5)],
  });
  const at = (id: CheckpointId): number => timeOf(motion, id);
  const samples = Array.from(trueSamples(motion, 60, noNoise, seededRandom(1)));
  const all = { from: at("arm-level-back"), to: at("arm-level-down") + 1500 };
  const high = whileHigh(samples, all);
  expect(high.from).toBeGreaterThan(all.from);
  expect(high.from).toBeLessThan(at("top") - 100);
  expect(high.to).toBeGreaterThan(at("top") + 100);
  expect(high.to).toBeLessThan(at("arm-level-down"));
  const handless = samples.map((sample) => ({ ...sample, hands: null }));
  expect(whileHigh(handless, all)).toEqual(all);
});
