import { longestPlausible } from "@overcue/client-capture/shaft/longest-plausible";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";

const at = (t: number, rate: number, handsSpeed = 0): number =>
  longestPlausible({ length: 0.7, rate, t: milliseconds(1000) }, milliseconds(t), handsSpeed, shaftTuning);

test("T25 a shaft last seen short cannot look long a picture later, the less so the slower it turns", () => {
  expect(at(1033, 0)).toBeLessThan(1.2);
  expect(at(1033, 20)).toBeGreaterThan(2);
  expect(at(1033, -20)).toBe(at(1033, 20));
  expect(at(1200, 0)).toBeGreaterThan(at(1033, 0));
});

test("T25 a shaft whose hands go fast may come out faster", () => {
  expect(at(1033, 0, 8)).toBeGreaterThan(at(1033, 0) + 0.2);
});

test("T25 what was not seen for a while, or never, may look as long as it likes", () => {
  expect(at(1000 + 1000 * shaftTuning.growMemory + 1, 0)).toBe(Infinity);
  expect(longestPlausible({ length: 0, rate: 0, t: null }, milliseconds(5), 0, shaftTuning)).toBe(Infinity);
});
