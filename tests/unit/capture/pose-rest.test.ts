import { expect, test } from "vitest";
import { makePoseRest } from "@overcue/client-capture/running/pose-rest";

test("S15 the pose model rests longer while pictures are missed, never for long, and not at all once none are", () => {
  const rest = makePoseRest();
  const restAfter = (at: number, missed: number): number => {
    rest.answered(at, missed);
    let over = 0;
    while (!rest.isOver(at + over)) over++;
    return over;
  };
  expect(rest.isOver(0)).toBe(true);
  expect(restAfter(0, 0)).toBe(0);
  const rests = Array.from({ length: 10 }, (_, i) => restAfter(1000 * (i + 1), i + 1));
  expect(rests).toEqual(rests.toSorted((a, b) => a - b));
  expect(rests[0]).toBeGreaterThan(0);
  expect(rests.at(-1)).toBeLessThanOrEqual(60);
  for (let i = 0; i < 40; i++) rest.answered(20_000 + i, 10);
  expect(restAfter(30_000, 10)).toBe(0);
});
