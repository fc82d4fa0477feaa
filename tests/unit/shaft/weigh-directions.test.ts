import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { clutterLevel } from "@overcue/client-capture/shaft/weigh-directions";
import { expect, test } from "vitest";

/** Evidence of 240 directions: noise of 1 nat everywhere, and 20 nats in the `wide` directions about `at` and about its opposite. */
function withRod(at: number, wide: number): Float32Array {
  const evidence = new Float32Array(240).fill(1);
  for (let k = -wide; k <= wide; k++) for (const middle of [at, at + 120]) evidence[(middle + k + 240) % 240] = 20;
  return evidence;
}

test("T34 a rod that is seen in a tenth of all directions is not its own clutter", () => {
  // Two times 13 of 240 directions: without a rod that is clutter.
  const evidence = withRod(3, 6);
  expect(clutterLevel(evidence, true, shaftTuning)).toBeLessThan(6);
  expect(clutterLevel(evidence, false, shaftTuning)).toBe(shaftTuning.clutterMost);
});

test("T34 lines in other directions stay clutter, with a rod too", () => {
  const evidence = withRod(3, 6);
  for (let i = 40; i < 80; i++) evidence[i] = 18;
  expect(clutterLevel(evidence, true, shaftTuning)).toBe(shaftTuning.clutterMost);
});
