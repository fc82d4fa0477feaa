import { makeHandsStay, stayedShare } from "@overcue/client-capture/shaft/hands-stay";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { expect, test } from "vitest";

const torso = 100;

/** What is said after hands went along `x` for `seconds`, thirty pictures a second. */
function stayedAfter(seconds: number, x: (t: number) => number): number {
  const stay = makeHandsStay();
  let share = 1;
  for (let t = 0; t <= seconds; t += 1 / 30) share = stayedShare(stay, t, x(t), 300, torso, shaftTuning);
  return share;
}

test("T43 hands at rest were here all the time, though their pose trembles", () => {
  expect(stayedAfter(0, () => 200)).toBe(1);
  expect(stayedAfter(5, () => 200)).toBeCloseTo(1, 3);
  expect(stayedAfter(5, (t) => 200 + 4 * Math.sin(40 * t))).toBeGreaterThan(0.85);
});

test("T43 hands that came lately were here for as long as the background has known them here", () => {
  for (const since of [0.5, 1, 3]) {
    const known = 1 - Math.exp(-since / shaftTuning.backgroundTime);
    const share = stayedAfter(6 + since, (t) => (t < 6 ? 0 : 200));
    expect(Math.abs(share - known)).toBeLessThan(0.12);
  }
});

test("T43 hands that go to and fro are seldom at their mean place", () => {
  const period = 1.7;
  expect(stayedAfter(4 * period, (t) => 200 + 80 * Math.sin((2 * Math.PI * t) / period))).toBeLessThan(0.3);
});
