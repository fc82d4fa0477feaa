import { describe, expect, it } from "vitest";
import { startOfGrowth } from "@overcue/client-capture/swing/start-of-growth";
import { gaussian, seededRandom } from "../../scenes/random.ts";

/** A minimum jerk reach from `start` on that takes `lasts` milliseconds (Flash and Hogan 1985, from memory), as a share of its way. */
const reached = (t: number, start: number, lasts: number): number => {
  const s = Math.min(1, Math.max(0, (t - start) / lasts));
  return 10 * s ** 3 - 15 * s ** 4 + 6 * s ** 5;
};

const early = (start: number, lasts: number, noise: () => number): { t: number; value: number }[] =>
  Array.from({ length: 400 }, (_, index) => ({ t: index * 5, share: reached(index * 5, start, lasts) }))
    .filter(({ share }) => share > 0.01 && share < 0.1)
    .map(({ t, share }) => ({ t, value: share + noise() }));

describe("when a reach began", () => {
  it.each([
    [300, 800],
    [200, 3000],
  ])("K2.2 is told within its error for a reach from %d ms on that takes %d ms", (start, lasts) => {
    const told = startOfGrowth(early(start, lasts, () => 0));
    expect(Math.abs((told?.t ?? Infinity) - start)).toBeLessThan(2 * (told?.sd ?? 0));
    expect(told?.sd).toBeLessThan(lasts / 10);
  });

  it("K2.2 is known worse where it scatters", () => {
    const random = seededRandom(3);
    const still = startOfGrowth(early(300, 800, () => 0))?.sd ?? Infinity;
    const shaken = startOfGrowth(early(300, 800, () => 0.01 * gaussian(random)))?.sd ?? 0;
    expect(shaken).toBeGreaterThan(still);
  });

  it("K2.3 is not told of fewer than three samples, or of what does not grow", () => {
    expect(
      startOfGrowth([
        { t: 0, value: 0.1 },
        { t: 10, value: 0.2 },
      ]),
    ).toBeNull();
    expect(startOfGrowth([0, 1, 2, 3].map((t) => ({ t, value: 0.1 - t / 100 })))).toBeNull();
  });
});
