import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { metres } from "@overcue/shared-geometry/units";
import { carryOverOf, wantedChange } from "@overcue/server/practice/figures/carry-over";
import { placesOf } from "@overcue/server/practice/figures/place";
import { summarisePlaces } from "@overcue/server/practice/figures/summarise-places";
import { weightedMedian } from "@overcue/server/practice/figures/weighted-median";
import { gaussian, seededRandom } from "../../scenes/random.ts";
import { habit, repRecord } from "./entries.ts";

const floor = metres(0.025);
const places = (...readings: readonly (readonly [y: number, sd: number])[]) =>
  readings.map(([y, sd]) => ({ y: metres(y), sd: metres(sd) }));

describe("figures", () => {
  it("P5 head point in the takeaway, butt point at lead arm level, the last pass of several, nothing where nothing is defined", () => {
    const rep = repRecord(1, habit);
    expect(placesOf(rep).map(({ checkpoint, y }) => [checkpoint, y])).toEqual([
      ["takeaway", 0.02],
      ["shaft-level-back", 0.3],
      ["arm-level-back", -0.3],
      ["arm-level-down", 0.35],
    ]);
    const pump = repRecord(2, { "arm-level-down": { y: 0.1, sd: 0.02 } }).checkpoints;
    expect(placesOf({ ...rep, checkpoints: [...rep.checkpoints, ...pump] }).at(-1)?.y).toBe(0.1);
    const blind = rep.checkpoints.map((reading) => ({
      ...reading,
      readOuts: { ...reading.readOuts, buttPoint: { defined: false as const, reason: "too-flat" as const } },
    }));
    expect(placesOf({ ...rep, checkpoints: blind }).map(({ checkpoint }) => checkpoint)).toEqual([
      "takeaway",
      "shaft-level-back",
    ]);
  });

  it("P6 equal errors give the ordinary median; an unsure reading does not move it as a sure one does", () => {
    expect(weightedMedian([])).toBeNull();
    expect(summarisePlaces(places([0.3, 0.02], [0.1, 0.02], [0.2, 0.02]), floor)?.median).toBe(0.2);
    expect(summarisePlaces(places([0.1, 0.02], [0.2, 0.02]), floor)?.median).toBeCloseTo(0.15, 12);
    const sure = summarisePlaces(places([0, 0.02], [0.01, 0.02], [0.5, 0.02], [0.52, 0.02]), floor);
    const unsure = summarisePlaces(places([0, 0.02], [0.01, 0.02], [0.5, 0.3], [0.52, 0.3]), floor);
    expect(sure?.median).toBeCloseTo(0.255, 12);
    expect(unsure?.median).toBeLessThanOrEqual(0.01);
  });

  it("P6 the median moves with the places, turns with their sign, and asks for no order", () => {
    const reading = fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: 1, max: 200 }));
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: -500, max: 500 }),
        (list, shift) => {
          const of = (change: (y: number) => number) =>
            summarisePlaces(places(...list.map(([y, sd]) => [change(y) / 1024, sd / 1024] as const)), floor);
          const plain = of((y) => y);
          expect(of((y) => y + shift)?.median).toBeCloseTo((plain?.median ?? Number.NaN) + shift / 1024, 9);
          expect(of((y) => -y)?.median).toBeCloseTo(-(plain?.median ?? Number.NaN), 9);
          const turned = list.map(([y, sd]) => [y / 1024, sd / 1024] as const).toReversed();
          const summary = summarisePlaces(places(...turned), floor);
          expect(summary?.median).toBeCloseTo(plain?.median ?? Number.NaN, 12);
          expect(summary?.sd).toBeCloseTo(plain?.sd ?? Number.NaN, 12);
        },
      ),
    );
  });

  it("P6 the stated error of a median of seven is the scatter of such medians, within a fifth", () => {
    const random = seededRandom(5);
    const medians = Array.from({ length: 4000 }, () =>
      summarisePlaces(places(...Array.from({ length: 7 }, () => [0.05 * gaussian(random), 0.05] as const)), floor),
    );
    const scatter = Math.sqrt(
      medians.reduce((sum, each) => sum + (each?.median ?? Number.NaN) ** 2, 0) / medians.length,
    );
    const stated = medians.reduce((sum, each) => sum + (each?.sd ?? Number.NaN), 0) / medians.length;
    expect(stated / scatter).toBeGreaterThan(0.8);
    expect(stated / scatter).toBeLessThan(1.25);
  });

  it("P7 carry-over is the share of the wanted change, with the error of both", () => {
    const wanted = { from: metres(-0.05), to: metres(0.05) };
    const change = wantedChange(metres(-0.4), wanted);
    expect(change).toBe(0.4);
    const baseline = { median: metres(-0.4), sd: metres(0.04) };
    const half = carryOverOf({ y: metres(-0.2), sd: metres(0.03) }, baseline, change);
    expect(half?.value).toBeCloseTo(0.5, 12);
    // sqrt(0.03^2 + (0.5 * 0.04)^2) / 0.4
    expect(half?.sd).toBeCloseTo(0.09013878, 7);
    expect(carryOverOf({ y: metres(0), sd: metres(0.03) }, baseline, change)?.sd).toBeCloseTo(0.075, 12);
  });

  it("P7 none where the baseline is inside what is wanted, both ends closed", () => {
    const wanted = { from: metres(-0.05), to: metres(0.05) };
    for (const y of [-0.05, 0, 0.05]) expect(wantedChange(metres(y), wanted)).toBe(0);
    expect(wantedChange(metres(0.0501), wanted)).toBeCloseTo(-0.0501, 12);
    expect(
      carryOverOf({ y: metres(0.3), sd: metres(0.01) }, { median: metres(0), sd: metres(0.01) }, metres(0)),
    ).toBeNull();
  });
});
