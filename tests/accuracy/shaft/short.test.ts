import { describe, expect, it } from "vitest";
import { sceneOf } from "../../scenes/conditions.ts";
import { readSection } from "../write-section.ts";
import { figuresOf } from "./figures.ts";
import { loadHoughFinder } from "./hough-lines.ts";
import { judgeScene } from "./judge-scene.ts";

/** The row's kept share within 5 degrees of one answer, or null where no results are kept yet. */
function keptWithin5(row: string, method: string): number | null {
  const line = readSection("shaft")
    ?.split("\n")
    .find((text) => text.startsWith(`| ${row} `) && text.includes(`| ${method} `));
  const cell = line?.split("|")[8];
  return cell === undefined ? null : Number.parseFloat(cell) / 100;
}

describe("accuracy:shaft, short form", () => {
  it("still runs, and stays within 0.1 of the kept results on its smallest row", async () => {
    const hough = await loadHoughFinder();
    const tallies = await judgeScene(sceneOf("small 240x384", 1), 1, {
      hough,
      clock: () => 0,
      mostFrames: 150,
      effort: "live",
      rodColour: null,
    });
    const now = figuresOf(tallies.now);
    expect(now.frames).toBe(150);
    expect(figuresOf(tallies.full).frames).toBe(150);
    expect(tallies.HoughLinesP.frames).toBe(38);
    const kept = keptWithin5("small 240x384", "now");
    expect(now.within5).toBeGreaterThan((kept ?? 0.85) - 0.1);
    expect(now.trackedShare).toBeGreaterThan(0.5);
  });
});
