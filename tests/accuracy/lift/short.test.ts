import { describe, expect, it } from "vitest";
import { readSection } from "../write-section.ts";
import { measureLift } from "./measure-lift.ts";
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
      const row = kept.split("\n").find((line) => line.startsWith(`| ${name} `)) ?? "";
      const before = Number(/\|\s*(-?[\d.]+) (?:cm|%)/.exec(row)?.[1]);
      expect(before, name).not.toBeNaN();
      expect(Math.abs(value - before), name).toBeLessThan(nearEnough[unit]);
    }
  });
});
