import fc from "fast-check";
import { expect, it } from "vitest";
import {
  momentsAbout,
  nextMoment,
  weightsBetween,
  type Moment,
} from "@overcue/client-capture/pipeline/through-moments";

const at = (...times: readonly number[]): Moment[] => times.map((t) => ({ t }));

it("K2.4 four moments' weights sum to 1, follow a straight course exactly, and give a moment its own value", () => {
  const gap = fc.double({ min: 5, max: 200, noNaN: true });
  fc.assert(
    fc.property(
      gap,
      gap,
      gap,
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.boolean(),
      fc.boolean(),
      (a, b, c, share, hasFirst, hasLast) => {
        const times = [0, a, a + b, a + b + c] as const;
        const [first, before, after, last] = times.map((t) => ({ t })) as [Moment, Moment, Moment, Moment];
        const t = before.t + share * b;
        const weights = weightsBetween(t, [hasFirst ? first : undefined, before, after, hasLast ? last : undefined]);
        expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
        expect(weights.reduce((sum, weight, index) => sum + weight * (times[index] ?? 0), 0)).toBeCloseTo(t, 6);
        const own = weightsBetween(before.t, [first, before, after, last]);
        expect(own.map((weight) => Math.round(weight * 1e9) / 1e9 + 0)).toEqual([0, 1, 0, 0]);
      },
    ),
  );
});

it("K2.4 there is nothing between before the first moment and after the last", () => {
  const moments = at(0, 50, 100);
  expect(nextMoment(moments, 0, 60)).toBe(2);
  expect(momentsAbout(moments, nextMoment(moments, 0, 60))).toEqual([{ t: 0 }, { t: 50 }, { t: 100 }, undefined]);
  expect(momentsAbout(moments, nextMoment(moments, 0, -1))).toBeNull();
  expect(momentsAbout(moments, nextMoment(moments, 0, 101))).toBeNull();
});
