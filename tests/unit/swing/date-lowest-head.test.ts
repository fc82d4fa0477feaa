import { describe, expect, it } from "vitest";
import { dateLowestHead } from "@overcue/client-capture/swing/date-lowest-head";

const lowestAt = 1013;
const down = 300;

/** A head that comes down and rises again, metres down the picture, seen every 17 ms but not in `hidden`. */
const heads = (from: number, to: number, hidden: (t: number) => boolean = () => false) =>
  Array.from({ length: 60 }, (_, i) => 500 + 17 * i)
    .filter((t) => t >= from && t <= to && !hidden(t))
    .map((t) => ({ t, x: 0, y: 2 - ((t - lowestAt) / 100) ** 2 }));

describe("impact by the head's lowest place in the picture", () => {
  it("K2.10 is a little later than the head is lowest, between the pictures, and as sure as they are close", () => {
    const close = dateLowestHead(heads(800, 1200), down);
    expect(close?.t).toBeGreaterThan(lowestAt);
    expect(close?.t).toBeLessThan(lowestAt + 0.03 * down);
    const apart = dateLowestHead(
      heads(800, 1200, (t) => Math.abs(t - lowestAt) > 10 && Math.abs(t - lowestAt) < 40),
      down,
    );
    expect(apart?.t).toBeCloseTo(close?.t ?? Number.NaN, 0);
    expect(apart?.sd).toBeGreaterThan(1.2 * (close?.sd ?? Infinity));
  });

  it("K2.10 says nothing where the head was not seen on both sides, or not about then", () => {
    expect(dateLowestHead(heads(800, lowestAt), down)).toBeNull();
    expect(dateLowestHead(heads(lowestAt + 5, 1200), down)).toBeNull();
    expect(
      dateLowestHead(
        heads(800, 1200, (t) => Math.abs(t - lowestAt) < 70),
        down,
      ),
    ).toBeNull();
    expect(dateLowestHead([], down)).toBeNull();
  });
});
