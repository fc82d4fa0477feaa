import { clockOffset } from "@overcue/client-display/link/clock-offset";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const delay = fc.double({ min: 0, max: 400, noNaN: true });

describe("D3 the relay's clock seen from a page", () => {
  test("D3 the true offset lies within the stated bound, however unequal the ways there and back", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.array(fc.tuple(delay, delay), { minLength: 1, maxLength: 12 }),
        (truth, trips) => {
          const samples = trips.map(([there, back], index) => {
            const asked = index * 1000;
            return { asked, answered: asked + there + back, relayTime: asked + there + truth };
          });
          const found = clockOffset(samples, trips.length * 1000);
          const error = found === null ? Infinity : Math.abs(found.offset - truth);
          expect(error).toBeLessThanOrEqual((found?.within ?? 0) + 1e-3);
        },
      ),
    );
  });

  test("D3 without samples nothing is claimed, and a sample that ends before it began is left out", () => {
    expect(clockOffset([], 0)).toBeNull();
    expect(clockOffset([{ asked: 10, answered: 5, relayTime: 0 }], 20)).toBeNull();
  });

  test("D3 the quickest round trip wins", () => {
    const slow = { asked: 0, answered: 300, relayTime: 1290 };
    const quick = { asked: 500, answered: 510, relayTime: 1505 };
    expect(clockOffset([slow, quick], 600)?.offset).toBe(1000);
  });
});
