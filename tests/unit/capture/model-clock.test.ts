import { expect, test } from "vitest";
import { ModelClock } from "@overcue/client-capture/workers/model-clock";

function toldFor(times: readonly number[]): number[] {
  const clock = new ModelClock();
  return times.map((t) => clock.at(t));
}

test("the pose model's time rises from picture to picture, also over equal times, a clip opened anew and a long pause", () => {
  const told = toldFor([0, 0, 33, 66, 0, 33, 3_600_000, 3_600_033]);
  told.slice(1).forEach((time, index) => {
    expect(time).toBeGreaterThan(told[index] ?? 0);
  });
});

test("the pose model is told that five times as much time has passed as has", () => {
  const [first = 0, second = 0, third = 0] = toldFor([100, 133, 233]);
  expect(second - first).toBeCloseTo(165);
  expect(third - second).toBeCloseTo(500);
});

test("a pause is not made up for: the model goes on as if hardly any time had passed", () => {
  const [before = 0, after = 0] = toldFor([100, 60_000]);
  expect(after - before).toBeLessThan(10);
});
