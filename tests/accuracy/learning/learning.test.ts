import { describe, expect, it } from "vitest";
import { readSection } from "../write-section.ts";
import { compareArms } from "./compare-arms.ts";
import { goalsOf, type Goal } from "./goals.ts";

const golfers = 80;

/** The share that the kept results give for this goal; null where there is none. */
function keptFigure(goal: Goal): number | null {
  const line = readSection("learning")
    ?.split("\n")
    .find((each) => each.startsWith(`| ${goal.what} `));
  const figure = line && /\| ([\d.]+) % \| (?:met|missed) \|$/.exec(line)?.[1];
  return figure === undefined || figure === "" ? null : Number(figure) / 100;
}

describe("simulated learning, short form", () => {
  it("P31 stays near the kept results", () => {
    const far = goalsOf(compareArms(golfers, "goal")).filter((goal) => {
      const kept = keptFigure(goal) ?? Number.NaN;
      // Three standard errors of a share of so many golfers, and no less than 5 points.
      const near = Math.max(0.05, 3 * Math.sqrt((kept * (1 - kept)) / golfers));
      return !(Math.abs(goal.figure - kept) <= near);
    });
    expect(far).toEqual([]);
  });
});
