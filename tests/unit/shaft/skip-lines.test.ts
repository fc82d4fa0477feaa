import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import { describe, expect, test } from "vitest";
import { drawBody, drawPicture, seeded } from "./draw-picture.ts";

const angle = 0.9;
const torso = 75;

/** What the live sweep sees along a thin shaft that passes the hands at `aside` pixels, with more than `mostLines` lines judged in part. */
function seenOf(aside: number, mostLines: number): { evidence: number; offset: number; lines: number } {
  const state = startShaftTracker({ handed: "right", tuning: { mostLines } });
  const [x, y] = [150 - aside * Math.sin(angle), 200 + aside * Math.cos(angle)];
  const shaft = {
    x: x + 12 * Math.cos(angle),
    y: y + 12 * Math.sin(angle),
    angle,
    length: 115,
    width: 1.6,
    level: 190,
  };
  const picture = drawPicture(300, 400, 90, [shaft], 4, seeded(3));
  trackShaft(state, { picture, t: milliseconds(0), body: drawBody(0, 150, 200, torso) });
  const { sweep } = state.sight;
  const direction = Math.round(angle / sweep.step);
  return {
    evidence: sweep.evidence[direction] ?? 0,
    offset: sweep.offset[direction] ?? Infinity,
    lines: sweep.strip.judged,
  };
}

describe("a strip of which every second line is judged", () => {
  test.each([-3, -2.5, -2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2, 2.5, 3])(
    "T42 shows a thin shaft that passes the hands at %s pixels as all lines do",
    (aside) => {
      const all = seenOf(aside, Infinity);
      const second = seenOf(aside, 4);
      expect(second.lines).toBeLessThan(0.6 * all.lines);
      expect(all.evidence).toBeGreaterThan(10);
      expect(second.offset).toBeCloseTo(all.offset, 5);
      // The texture of a row is that of the judged lines only.
      expect(Math.abs(second.evidence / all.evidence - 1)).toBeLessThan(0.1);
    },
  );
});
