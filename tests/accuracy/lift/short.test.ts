import { describe, expect, it } from "vitest";
import { keptFigure } from "../judged.ts";
import { readSection } from "../write-section.ts";
import { exactLaying, measureLift } from "./measure-lift.ts";
import { measureReps } from "./reps/measure-reps.ts";
import { figuresOf } from "./reps/report-reps.ts";
import { judgeLift } from "./report-lift.ts";

/** How far a short run may stray from the kept figures: a run of this size scatters by about half of it. */
const nearEnough = { cm: 1.5, "%": 6 } as const;

describe("accuracy of the lift, short form", () => {
  it("L6 still runs and stays near the kept results", () => {
    const kept = readSection("lift");
    if (kept === null) throw new Error("tests/accuracy/RESULTS.md has no section lift: run npm run accuracy:lift");
    const measure = measureLift(320, "as-stated");
    expect(measure.solved).toBeGreaterThan(300);
    for (const { name, value, unit } of judgeLift(measure)) {
      const before = keptFigure(kept, name);
      expect(before, name).not.toBeNaN();
      expect(Math.abs(value - before), name).toBeLessThan(nearEnough[unit]);
    }
  });

  it("F2 whole reps still run, claim hardly a wrong band and stay near the kept results", { timeout: 120_000 }, () => {
    const kept = readSection("lift-reps");
    if (kept === null) throw new Error("tests/accuracy/RESULTS.md has no section lift-reps: run npm run accuracy:lift");
    const reps = measureReps(12, exactLaying);
    expect(reps.length).toBeGreaterThan(9);
    const all = figuresOf(reps.flatMap(({ finished }) => finished));
    const row = kept.split("\n").find((line) => line.startsWith("| all |")) ?? "";
    const [, , , p50 = NaN, , covers = NaN] = row.split("|").map(Number);
    expect(Math.abs(all.p50 - p50)).toBeLessThan(1.5);
    expect(Math.abs(all.covers - covers)).toBeLessThan(9);
    expect(all.wrongBand).toBeLessThan(4);
  });
});
