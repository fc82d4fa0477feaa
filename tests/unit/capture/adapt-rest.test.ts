import { expect, test } from "vitest";
import { adaptRest } from "@overcue/client-capture/running/adapt-rest";

test("S15 work that can wait rests longer while pictures are missed, never for long, and not at all once none are", () => {
  const rest = adaptRest({ longest: 60, longer: 15, shorter: 2 });
  const restAfter = (at: number, missed: number): number => {
    rest.worked(at, missed);
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
  for (let i = 0; i < 40; i++) rest.worked(20_000 + i, 10);
  expect(restAfter(30_000, 10)).toBe(0);
});
