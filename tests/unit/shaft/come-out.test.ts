import { arrivalOdds } from "@overcue/client-capture/shaft/arrival-odds";
import { comeOut } from "@overcue/client-capture/shaft/come-out";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { weighEmergence } from "@overcue/client-capture/shaft/weigh-emergence";
import { expect, test } from "vitest";

const second = 1 / 60;

test("T29 coming out of end-on is weighed once, however many pictures it takes", () => {
  const emergence = { out: 0, fresh: 0 };
  let sum = 0;
  for (const long of [0, 0.2, 0.5, 0.45, 0.8, 1, 1, 0.9, 1]) {
    comeOut(emergence, long, second, shaftTuning);
    sum += emergence.fresh;
  }
  expect(sum).toBeGreaterThanOrEqual(1);
  expect(sum).toBeLessThan(1.3);
});

test("T29 what is not seen long for a while comes out anew", () => {
  const emergence = { out: 0, fresh: 0 };
  comeOut(emergence, 1, second, shaftTuning);
  comeOut(emergence, 1, second, shaftTuning);
  expect(emergence.fresh).toBe(0);
  comeOut(emergence, 0, shaftTuning.outMemory, shaftTuning);
  comeOut(emergence, 1, second, shaftTuning);
  expect(emergence.fresh).toBeCloseTo(1, 9);
});

test.each([
  ["right", shaftTuning.highDirection],
  ["left", Math.PI - shaftTuning.highDirection],
] as const)("T29 with the hands high a %s-hander's club comes out where clubs then are, by odds", (handed, usual) => {
  const directions = 240;
  const { high } = arrivalOdds(directions, handed, shaftTuning);
  const at = (angle: number): number =>
    ((Math.round((angle * directions) / (2 * Math.PI)) % directions) + directions) % directions;
  const likelihood = new Float32Array(directions).fill(3);
  weighEmergence(likelihood, high, 0);
  expect(Math.min(...likelihood)).toBe(3);
  weighEmergence(likelihood, high, 0.5);
  weighEmergence(likelihood, high, 0.5);
  const ratio = (likelihood[at(usual)] ?? 0) / (likelihood[at(usual + Math.PI)] ?? 1);
  expect(ratio).toBeGreaterThan(10);
  expect(ratio).toBeLessThan(100);
});
