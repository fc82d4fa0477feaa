import { handsGone, noveltyOf } from "@overcue/client-capture/shaft/novelty-of";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { expect, test } from "vitest";

const seen = (fresh: number, moved: number, stayed = 1): number =>
  noveltyOf(
    fresh,
    0.4,
    Math.exp(-((moved / shaftTuning.stillReach) ** 2)),
    handsGone(moved, stayed, shaftTuning),
    shaftTuning,
  );

test("T26 a post that hands of now pass was there all along, and counts for nothing", () => {
  expect(seen(0.05, 0.8)).toBeLessThan(0.01);
  expect(seen(0.8, 0.8)).toBeCloseTo(1, 3);
});

test("T26 a pose that trembles about hands at rest leaves a shaft at address as it is", () => {
  for (const moved of [0, 0.05, 0.1]) expect(seen(0, moved)).toBeGreaterThan(0.35);
});

test("T26 it is a share of one, and grows with what is new", () => {
  for (const moved of [0, 0.1, 0.3, 1]) {
    const all = Array.from({ length: 21 }, (_, i) => seen(i / 20, moved));
    expect(Math.min(...all)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...all)).toBeLessThanOrEqual(1);
    expect(all).toEqual(all.toSorted((a, b) => a - b));
  }
});

test("T43 a post that hands of now pass on their way up and down was there all along, though they pass their mean place", () => {
  for (const moved of [0, 0.1, 0.2]) {
    expect(seen(0, moved, 0.15)).toBeLessThan(0.16);
    expect(seen(0.8, moved, 0.15)).toBeGreaterThan(0.75);
  }
});
