import { describe, expect, it } from "vitest";
import { metres } from "@overcue/shared-geometry/units";
import { namePattern } from "@overcue/server/practice/baseline/name-pattern";
import { placesOf } from "@overcue/server/practice/figures/place";
import { repRecord } from "./entries.ts";

const layout = { toeLine: metres(0.575), heelLine: metres(0.875), tolerance: metres(0.05) };

const patternOf = (pairs: readonly (readonly [back: number, down: number])[], sd = 0.03) =>
  namePattern(
    pairs.map(([back, down], index) => {
      const rep = repRecord(index, { "arm-level-back": { y: back, sd }, "arm-level-down": { y: down, sd } });
      return { repId: rep.id, places: placesOf(rep), shown: {} };
    }),
    layout,
  );

const seven = (back: number, down: number) => Array.from({ length: 7 }, () => [back, down] as const);

describe("the pattern", () => {
  it.each([
    ["flat back, steep down", seven(-0.3, 0.3), "flat-to-steep"],
    ["its reverse", seven(0.4, -0.2), "steep-to-flat"],
    ["the same both ways", seven(0.1, 0.12), "even"],
    ["steep, then steeper still", seven(0.7, 1.1), "mixed"],
    ["flat, then flatter still", seven(-0.2, -0.6), "mixed"],
    ["reps that disagree", [...seven(-0.3, 0.3).slice(3), ...seven(0.3, -0.3).slice(4)], "mixed"],
  ])("P11 %s", (_, pairs, name) => {
    const pattern = patternOf(pairs);
    expect(pattern.name).toBe(name);
    expect(pattern.odds).toBeGreaterThan(0.8);
    expect(pattern.odds).toBeLessThanOrEqual(1);
  });

  it("P11 fewer than five reps that show both say so", () => {
    expect(patternOf(seven(-0.3, 0.3).slice(3))).toEqual({ name: "not-enough-data", odds: 1 });
  });

  it("P11 on the edge of even the odds are near a half, and less sure readings are less sure of the pattern", () => {
    const edge = patternOf(seven(0, 0.1));
    expect(edge.odds).toBeLessThan(0.6);
    const sure = patternOf(seven(-0.1, 0.15), 0.02).odds;
    const unsure = patternOf(seven(-0.1, 0.15), 0.2).odds;
    expect(unsure).toBeLessThan(sure - 0.1);
  });

  it("P11 back and down exchanged exchange the names where neither end is an outer one", () => {
    const one = patternOf(seven(0, 0.3));
    const other = patternOf(seven(0.3, 0));
    expect([one.name, other.name]).toEqual(["flat-to-steep", "steep-to-flat"]);
    expect(one.odds).toBeCloseTo(other.odds, 2);
  });
});
