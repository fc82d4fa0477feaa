import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { metres } from "@overcue/shared-geometry/units";
import { arrivesAtFirst, updateArrives } from "@overcue/server/practice/cue/arrives";
import { proposeCue } from "@overcue/server/practice/cue/propose-cue";
import { capOf, startCue } from "@overcue/server/practice/cue/start-cue";
import type { PracticeEvent } from "@overcue/server/practice/journal/events";
import { replay } from "@overcue/server/practice/journal/replay";
import { targetsOf, ladderOf } from "@overcue/server/practice/journal/targets";
import { practiceSettings } from "@overcue/server/practice/settings";
import { share } from "@overcue/server/practice/units";
import { baselineReps, habit, journalOf, repRecord, someone } from "./entries.ts";

const layout = { toeLine: metres(0.575), heelLine: metres(0.875), tolerance: metres(0.05) };
const onBallLine = { from: metres(-0.05), to: metres(0.05) };

/** The practice of "g" after these events, and its target at lead arm level back. */
function after(...events: readonly PracticeEvent[]) {
  const practice = replay(journalOf([...someone, ...events]));
  const book = practice.golfers["g"];
  if (!book) throw new Error("the golfer is there");
  const target = targetsOf(book, practice).find(({ checkpoint }) => checkpoint === "arm-level-back");
  if (!target) throw new Error("the drill has that checkpoint");
  return { book, target, ladder: ladderOf(book) };
}

const block = (y: number, from = 20): readonly PracticeEvent[] =>
  Array.from({ length: 5 }, (_, index) => ({
    type: "rep-recorded",
    rep: repRecord(from + index, {
      ...habit,
      "arm-level-back": { y, sd: 0.02 },
      "arm-level-down": { y: -0.05, sd: 0.02 },
    }),
  }));

describe("the first cue", () => {
  it("P12 lies twice the wanted change from the baseline", () => {
    const cue = startCue(metres(-0.17), onBallLine, layout);
    expect(cue.exaggerateBy).toBeCloseTo(0.17, 12);
    expect(cue.reason).toContain("17 cm");
  });

  it("P12 is drawn onto a stick that is near, never past the cap or short of what is wanted", () => {
    expect(startCue(metres(-0.55), onBallLine, layout).exaggerateBy).toBeCloseTo(0.575, 12);
    fc.assert(
      fc.property(fc.double({ min: -0.9, max: 0.9, noNaN: true }), (baseline) => {
        const change = Math.abs(baseline) <= 0.05 ? 0 : -baseline;
        const gain = change === 0 ? 1 : 1 + startCue(metres(baseline), onBallLine, layout).exaggerateBy / change;
        expect(gain).toBeGreaterThanOrEqual(1);
        expect(gain).toBeLessThanOrEqual(practiceSettings.cue.capGain + 1e-9);
      }),
    );
  });

  it("P12 is the drill's usual one before a baseline, and none where the baseline is inside or on the drill's other side", () => {
    expect(after().target.cue).toMatchObject({ setBy: "drill" });
    expect(after().target.cue.exaggerateBy).toBeCloseTo(0.875 - 0.05, 12);
    const withHabit = (y: number) =>
      after(
        ...Array.from({ length: 7 }, (_, i) => ({
          type: "rep-recorded" as const,
          rep: repRecord(i, { "arm-level-back": { y, sd: 0.02 } }),
        })),
      ).target;
    expect(withHabit(0.05)).toMatchObject({ exaggerates: false, change: 0, cue: { exaggerateBy: 0 } });
    expect(withHabit(0.6)).toMatchObject({ exaggerates: false, cue: { exaggerateBy: 0 } });
    expect(withHabit(0.6).cue.reason).toContain("other side");
    expect(withHabit(-0.3)).toMatchObject({ exaggerates: true });
  });

  it("P10 seven reps make the baseline; three are enough for a checkpoint if a person goes on, two are not", () => {
    expect(after(...baselineReps(6)).book.mode).toBe("baseline");
    expect(after(...baselineReps(7))).toMatchObject({
      book: { mode: "practice" },
      target: { baseline: { reps: 7, median: -0.3 } },
    });
    const go = { type: "mode-started", mode: "practice" } as const;
    expect(after(...baselineReps(3), go).target.baseline).toMatchObject({ reps: 3 });
    expect(after(...baselineReps(2), go).target.baseline).toBeNull();
  });
});

describe("the belief about what arrives", () => {
  it("P13 one block is Bayes' rule for two normal beliefs", () => {
    const learnt = updateArrives(arrivesAtFirst, { felt: metres(0.5), reached: metres(0.3), reachedSd: metres(0.05) });
    // Prior 0.3 +- 0.2, seen 0.6 +- 0.1: precisions 25 and 100.
    expect(learnt.mean).toBeCloseTo((0.3 * 25 + 0.6 * 100) / 125, 12);
    expect(learnt.sd).toBeCloseTo(Math.sqrt(1 / 125), 12);
    expect(learnt.blocks).toBe(1);
  });

  it("P13 agrees with the posterior found by adding up a fine grid", () => {
    const learnt = updateArrives(arrivesAtFirst, {
      felt: metres(-0.4),
      reached: metres(-0.1),
      reachedSd: metres(0.06),
    });
    let weight = 0;
    let mean = 0;
    for (let rate = -2; rate <= 3; rate += 1e-4) {
      const prior = Math.exp(-(((rate - 0.3) / 0.2) ** 2) / 2);
      const odds = prior * Math.exp(-(((-0.1 - rate * -0.4) / 0.06) ** 2) / 2);
      weight += odds;
      mean += odds * rate;
    }
    expect(learnt.mean).toBeCloseTo(mean / weight, 6);
  });

  it("P13 a block without a felt change teaches nothing and makes nothing surer", () => {
    const same = updateArrives(
      { ...arrivesAtFirst, blocks: 2 },
      { felt: metres(0), reached: metres(0.1), reachedSd: metres(0.05) },
    );
    expect(same.mean).toBe(arrivesAtFirst.mean);
    expect(same.sd).toBeGreaterThan(arrivesAtFirst.sd);
  });
});

describe("the next cue", () => {
  const question = fc.record({
    change: fc.oneof(fc.double({ min: 0.1, max: 0.8, noNaN: true }), fc.double({ min: -0.8, max: -0.1, noNaN: true })),
    gain: fc.double({ min: 0.5, max: 6, noNaN: true }),
    rate: fc.double({ min: -0.2, max: 1.5, noNaN: true }),
    reached: fc.double({ min: -0.5, max: 2.5, noNaN: true }),
    fellBack: fc.boolean(),
  });

  it("P14 one step at most, never short of what is wanted, never past the cap without a yes, always with a reason", () => {
    fc.assert(
      fc.property(question, ({ change, gain, rate, reached, fellBack }) => {
        const proposal = proposeCue({
          change: metres(change),
          wantedPlace: metres(0),
          exaggerateBy: metres((gain - 1) * change),
          arrives: { mean: share(rate), sd: share(0.1), blocks: 1 },
          carryOver: { value: share(reached), sd: share(0.1) },
          layout,
          fellBack,
        });
        const next = 1 + proposal.exaggerateBy / change;
        expect(Math.abs(next - gain)).toBeLessThanOrEqual(practiceSettings.cue.step + 1e-9);
        expect(next).toBeGreaterThanOrEqual(Math.min(gain, 1) - 1e-9);
        const highest = proposal.needsYes ? Infinity : Math.max(gain, practiceSettings.cue.capGain) + 1e-9;
        expect(next).toBeLessThanOrEqual(highest);
        expect(next).toBeGreaterThanOrEqual(fellBack ? gain - 1e-9 : -Infinity);
        expect(proposal.reason).toMatch(/^-?\d+ % of the wanted change arrived; .*\.$/);
      }),
      { numRuns: 500 },
    );
  });

  it("P14 too little arrived: up to the cap by itself, then it asks", () => {
    const first = after(...baselineReps(7), ...block(-0.25));
    expect(first.target.cue.setBy).toBe("adaptive");
    expect(first.target.cue.exaggerateBy).toBeGreaterThan(0.35);
    expect(first.target.cue.exaggerateBy).toBeLessThanOrEqual(capOf(first.target.change ?? metres(0)) + 1e-12);
    const second = after(...baselineReps(7), ...block(-0.25), ...block(-0.25, 30));
    expect(second.target.cue.exaggerateBy).toBe(first.target.cue.exaggerateBy);
    const waiting = second.ladder.proposals["arm-level-back"];
    expect(waiting).toMatchObject({ needsYes: true });
    expect(waiting?.reason).toContain("asks for your yes");
    const yes = after(...baselineReps(7), ...block(-0.25), ...block(-0.25, 30), { type: "proposals-accepted" });
    expect(yes.target.cue.exaggerateBy).toBe(waiting?.exaggerateBy);
    expect(yes.ladder.proposals).toEqual({});
  });

  it("P14 all arrived: it rests; too much: it goes down", () => {
    const rested = after(...baselineReps(7), ...block(0.03));
    expect(rested.target.cue.exaggerateBy).toBeCloseTo(after(...baselineReps(7)).target.cue.exaggerateBy, 12);
    expect(rested.target.cue.reason).toContain("the cue stays");
    const lower = after(...baselineReps(7), ...block(0.3));
    expect(lower.target.cue.exaggerateBy).toBeLessThan(0.35 - 0.02);
    expect(lower.target.cue.reason).toContain("goes down");
  });

  it("P15 locked or by hand it only proposes; a person's own cue holds, past the cap too", () => {
    for (const event of [
      { type: "cue-locked", locked: true },
      { type: "cue-mode-set", cueMode: "by-hand" },
    ] as const) {
      const held = after(...baselineReps(7), event, ...block(-0.25));
      expect(held.target.cue.setBy).toBe("start");
      expect(held.ladder.proposals["arm-level-back"]).toMatchObject({ needsYes: false });
    }
    const byHand = after(...baselineReps(7), { type: "exaggeration-set", checkpoint: "arm-level-back", metres: 0.9 });
    expect(byHand.target.cue).toMatchObject({ exaggerateBy: 0.9, setBy: "person" });
  });
});
