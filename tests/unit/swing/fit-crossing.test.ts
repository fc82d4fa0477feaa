import { describe, expect, it } from "vitest";
import { fitCrossing, type SeriesPoint } from "@overcue/client-capture/swing/fit-crossing";
import { gaussian, seededRandom } from "../../scenes/random.ts";

const options = { least: 50, change: 0.5, sharedErrors: 1 };

/** sin(2 pi t / 2000 ms), sampled every `step` ms with noise. */
function wave(step: number, sd: number, seed: number): SeriesPoint[] {
  const random = seededRandom(seed);
  return Array.from({ length: Math.floor(1500 / step) }, (_, index) => {
    const t = 250 + index * step;
    return { t, value: Math.sin((2 * Math.PI * t) / 2000) + sd * gaussian(random), sd };
  });
}

describe("instants between samples", () => {
  it("K2.1 finds the crossing far finer than the samples stand apart", () => {
    const series = wave(33.3, 0, 1);
    const from = series.findIndex((point) => point.value < 0) - 1;
    expect(Math.abs((fitCrossing(series, from, 0, options)?.t ?? 0) - 1000)).toBeLessThan(0.5);
  });

  it("K2.2 states an error that covers the truth in 92 to 98 of 100 cases", () => {
    const runs = 400;
    let covered = 0;
    for (let seed = 0; seed < runs; seed++) {
      const series = wave(16.7, 0.02, seed);
      const from = series.findIndex((point, index) => point.t > 900 && (series[index + 1]?.value ?? 1) < 0);
      const crossing = fitCrossing(series, from, 0, options);
      if (crossing !== null && Math.abs(crossing.t - 1000) < 1.96 * crossing.sd) covered++;
    }
    expect(covered / runs).toBeGreaterThan(0.92);
    expect(covered / runs).toBeLessThanOrEqual(0.98);
  });

  it("K2.3 finds nothing between samples that do not enclose the level's place", () => {
    expect(fitCrossing([{ t: 0, value: 1, sd: 0.1 }], 0, 0, options)).toBeNull();
    expect(
      fitCrossing(
        [
          { t: 0, value: 1, sd: 0.1 },
          { t: 10, value: 1, sd: 0.1 },
        ],
        0,
        1,
        options,
      ),
    ).toBeNull();
  });
});
