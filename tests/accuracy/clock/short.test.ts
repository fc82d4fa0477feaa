import { describe, expect, it } from "vitest";
import { keptFigure } from "../judged.ts";
import { readSection } from "../write-section.ts";
import { judgeGoals } from "./goals.ts";
import { measureSimulated } from "./measure-clock.ts";

/** How far a run of two sessions may stray from the kept figures, percent and centimetres. */
const nearEnough = { "%": 30, cm: 15 } as const;

describe("accuracy of the clock, short form", () => {
  it("K3 K2 still runs and stays near the kept results", () => {
    const kept = readSection("clock");
    if (kept === null) throw new Error("tests/accuracy/RESULTS.md has no section clock: run npm run accuracy:clock");
    const simulated = kept.slice(kept.indexOf("### Simulated"));
    const figures = judgeGoals([measureSimulated(2).judged, measureSimulated(3).judged]);
    for (const name of ["reps found", "of the reported reps, real", "instants: 95 % interval covers"]) {
      const figure = figures.find((one) => one.name === name);
      const before = keptFigure(simulated, name);
      expect(before, name).not.toBeNaN();
      expect(Math.abs((figure?.value ?? Number.NaN) - before), name).toBeLessThan(nearEnough[figure?.unit ?? "%"]);
    }
  }, 120_000);
});
