import { describe, expect, it } from "vitest";
import { keptFigure } from "../judged.ts";
import { readSection } from "../write-section.ts";
import { judgeGoals } from "./goals.ts";
import { measureInPicture } from "./measure-in-picture.ts";

/** How far a run of three sessions may stray from the kept figures, percent. */
const nearEnough = 20;

describe("accuracy of a clip without a station, short form", () => {
  it("K5.1 K5.2 still runs and stays near the kept results", () => {
    const kept = readSection("clip");
    if (kept === null) throw new Error("tests/accuracy/RESULTS.md has no section clip: run npm run accuracy:clip");
    for (const { name, value } of judgeGoals([measureInPicture(1), measureInPicture(2), measureInPicture(3)])) {
      const before = keptFigure(kept, name);
      expect(before, name).not.toBeNaN();
      expect(Math.abs(value - before), name).toBeLessThan(nearEnough);
    }
  }, 120_000);
});
