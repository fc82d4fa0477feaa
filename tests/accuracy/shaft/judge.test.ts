import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { imagePoint } from "@overcue/shared-geometry/point";
import { pixels, radians } from "@overcue/shared-geometry/units";
import { describe, expect, it } from "vitest";
import { gaussian, seededRandom } from "../../scenes/random.ts";
import { figuresOf, type Figures } from "./figures.ts";
import { goalsOf, isMet } from "./goals.ts";
import { missedGoals, tableOf } from "./table.ts";
import { count, emptyTally, type Fact } from "./tally.ts";

const degree = Math.PI / 180;

/** An oracle that knows the truth and errs by a known amount, judged on many pictures. */
function judged(make: (truth: number, index: number) => Parameters<typeof count>[1], pictures = 4000): Figures {
  const random = seededRandom(11);
  const tally = emptyTally();
  for (let index = 0; index < pictures; index++) {
    const truth = radians((2 * random() - 1) * Math.PI);
    const fact: Fact = { angle: truth, line: null, findable: index % 4 !== 0 };
    count(tally, make(truth, index), fact);
  }
  return figuresOf(tally);
}

const tracked = (angle: number, sdDegrees: number) =>
  ({ status: "tracked", angle: radians(angle), sd: radians(sdDegrees * degree) }) as const;

describe("the judge of the shaft tracker", () => {
  it("measures an injected normal error of 1 degree, stated as such, as the normal distribution has it", () => {
    const random = seededRandom(3);
    const figures = judged((truth) => tracked(truth + degree * gaussian(random), 1));
    expect(figures.within1).toBeCloseTo(0.683, 1);
    expect(figures.within2).toBeCloseTo(0.954, 1);
    expect(figures.medianDegrees).toBeCloseTo(0.674, 1);
    expect(figures.coverage).toBeGreaterThan(0.94);
    expect(figures.coverage).toBeLessThan(0.96);
    expect(figures.trackedShare).toBe(1);
    expect(figures.confidentWrong).toBe(0);
    expect(figures.falseLock).toBe(0);
  });

  it("sees an error stated at half its size", () => {
    const random = seededRandom(4);
    const figures = judged((truth) => tracked(truth + degree * gaussian(random), 0.5));
    expect(figures.coverage).toBeGreaterThan(0.64);
    expect(figures.coverage).toBeLessThan(0.71);
  });

  it("counts head and hands the wrong way round as a false lock, sure and wrong", () => {
    const figures = judged((truth, index) => tracked(index % 10 === 0 ? truth + Math.PI : truth, 0.5));
    expect(figures.falseLock).toBeCloseTo(0.1, 6);
    expect(figures.confidentWrong).toBeCloseTo(0.1, 6);
    expect(figures.within5).toBeCloseTo(0.9, 6);
  });

  it("does not call an answer wrong that says itself that it may be", () => {
    const figures = judged((truth) => tracked(truth + 8 * degree, 5));
    expect(figures.confidentWrong).toBe(0);
    expect(figures.falseLock).toBe(0);
    expect(figures.within5).toBe(0);
    expect(figures.coverage).toBe(1);
  });

  it("takes angles the short way round", () => {
    const tally = emptyTally();
    count(tally, tracked(-Math.PI + 0.001, 1), { angle: radians(Math.PI - 0.001), line: null, findable: true });
    expect(figuresOf(tally).medianDegrees).toBeLessThan(0.2);
  });

  it("asks for an answer only where one can be given, and forgives none that was given", () => {
    const lostWhereHidden = judged((truth, index) => (index % 4 === 0 ? { status: "lost" } : tracked(truth, 1)));
    expect(lostWhereHidden.trackedShare).toBe(1);
    expect(lostWhereHidden.lost).toBe(0.25);
    const wrongWhereHidden = judged((truth, index) => tracked(index % 4 === 0 ? truth + 1 : truth, 1));
    expect(wrongWhereHidden.falseLock).toBe(0.25);
  });

  it("measures whether line and head lie where they say", () => {
    const random = seededRandom(6);
    const tally = emptyTally();
    const line = { grip: imagePoint(100, 100), neck: imagePoint(300, 100), head: imagePoint(300, 100) };
    for (let index = 0; index < 4000; index++) {
      const places = {
        grip: imagePoint(100 + 30 * gaussian(random), 100 + 2 * gaussian(random)),
        head: imagePoint(300 + 10 * gaussian(random), 100),
        offsetSd: pixels(2),
        headSd: pixels(5),
      };
      count(tally, { ...tracked(0, 1), ...places }, { angle: radians(0), line, findable: true });
    }
    const figures = figuresOf(tally);
    expect(figures.acrossCoverage).toBeGreaterThan(0.94);
    expect(figures.acrossCoverage).toBeLessThan(0.96);
    expect(figures.headCoverage).toBeGreaterThan(0.64);
    expect(figures.headCoverage).toBeLessThan(0.71);
  });

  it("takes a line that ends anywhere along the head's neck for one that ends where it should, and one that ends before or beyond it not", () => {
    const line = { grip: imagePoint(100, 100), neck: imagePoint(290, 100), head: imagePoint(300, 100) };
    const rightAt = (x: number): number | null => {
      const tally = emptyTally();
      const places = { grip: imagePoint(100, 100), head: imagePoint(x, 100), offsetSd: pixels(2), headSd: pixels(1) };
      count(tally, { ...tracked(0, 1), ...places }, { angle: radians(0), line, findable: true });
      return figuresOf(tally).headCoverage;
    };
    expect([287, 289, 295, 301, 303].map(rightAt)).toEqual([0, 1, 1, 1, 0]);
  });

  it("claims nothing for a prediction", () => {
    const predicted = { status: "predicted", angle: radians(0), sd: radians(degree) } satisfies Partial<ShaftInImage>;
    const figures = judged(() => predicted);
    expect(figures.tracked).toBe(0);
    expect(figures.trackedShare).toBe(0);
    expect(figures.medianDegrees).toBeNull();
    expect(figures.lost).toBe(0);
  });

  it("holds every claim about empty hands to be false", () => {
    const tally = emptyTally();
    for (let index = 0; index < 100; index++) {
      count(tally, index < 4 ? tracked(1, 0.5) : { status: "lost" }, { angle: null, line: null, findable: false });
    }
    const figures = figuresOf(tally);
    expect(figures.falseLock).toBe(0.04);
    expect(figures.confidentWrong).toBe(0.04);
    expect(goalsOf("empty hands").every((goal) => isMet(goal, figures))).toBe(false);
  });

  it("names each goal that was missed, and none that was met", () => {
    const random = seededRandom(5);
    const good = judged((truth) => tracked(truth + 0.4 * degree * gaussian(random), 0.42));
    const line = (figures: Figures) => ({ name: "slow+rod", method: "now", figures }) as const;
    expect(missedGoals([line(good)])).toEqual([]);
    const bad = judged((truth) => tracked(truth + 3 * degree, 3));
    expect(missedGoals([line(bad)]).join("\n")).toMatch(/<= 2 deg 0\.0 %, goal >= 99\.0 %/);
    expect(tableOf([line(bad)])).toContain("missed: >= 99.0 %");
    expect(missedGoals([{ ...line(bad), method: "HoughLinesP" }])).toEqual([]);
  });
});
