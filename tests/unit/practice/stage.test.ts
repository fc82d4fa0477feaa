import { describe, expect, it } from "vitest";
import { stageIds } from "@overcue/shared-geometry/wire/practice";
import type { PracticeEvent } from "@overcue/server/practice/journal/events";
import { replay } from "@overcue/server/practice/journal/replay";
import { ladderOf } from "@overcue/server/practice/journal/targets";
import { feedbackPlans } from "@overcue/server/practice/speak/feedback-plan";
import { judgeBlock } from "@overcue/server/practice/stage/judge-block";
import { stages, usualStageRules } from "@overcue/server/practice/stage/stages";
import { share } from "@overcue/server/practice/units";
import { baselineReps, habit, journalOf, repRecord, someone } from "./entries.ts";

const sure = (...values: readonly (number | null)[]) =>
  values.map((value) => (value === null ? null : { value: share(value), sd: share(0) }));
const column = (...values: readonly (number | null)[]) => {
  const seen = values.flatMap((value) => value ?? []).toSorted((a, b) => a - b);
  return { reps: sure(...values), block: { value: share(seen[Math.floor(seen.length / 2)] ?? 0), sd: share(0.05) } };
};

/** The ladder after a baseline, this stage, and blocks whose reps all reach this share of the wanted change. */
function ladderAfter(stage: (typeof stageIds)[number], ...reached: readonly number[]) {
  const blocks = reached.flatMap((part, block) =>
    Array.from({ length: 5 }, (_, rep): PracticeEvent => {
      const places = {
        "arm-level-back": { y: -0.3 + 0.35 * part, sd: 0.01 },
        "arm-level-down": { y: 0.35 - 0.4 * part, sd: 0.01 },
      };
      return { type: "rep-recorded", rep: repRecord(100 + block * 5 + rep, { ...habit, ...places }) };
    }),
  );
  const practice = replay(journalOf([...someone, ...baselineReps(7), { type: "stage-set", stage }, ...blocks]));
  const book = practice.golfers["g"];
  if (!book) throw new Error("the golfer is there");
  return ladderOf(book);
}

describe("the stages", () => {
  it.each([
    ["four of five there", [column(0.8, 0.9, 1, 0.85, 0.1)], "pass"],
    ["three of five there", [column(0.8, 0.9, 1, 0.79, 0.1)], "stay"],
    ["one rep unread, four there", [column(0.8, 0.9, 1, 0.85, null)], "pass"],
    ["one checkpoint there, the other not", [column(1, 1, 1, 1, 1), column(0.6, 0.6, 0.6, 0.6, 0.6)], "stay"],
    ["exactly half", [column(0.5, 0.5, 0.5, 0.5, 0.5)], "stay"],
    ["under half", [column(0.49, 0.49, 0.49, 0.49, 0.49)], "fall-back"],
    ["nothing to change", [], "pass"],
    ["nothing read", [{ reps: sure(null, null, null, null, null), block: null }], "stay"],
  ] as const)("P17 %s", (_, columns, judgement) => {
    expect(judgeBlock(columns, usualStageRules)).toBe(judgement);
  });

  it("P17 unsure reps count as fractions: five that are as likely under as over do not pass", () => {
    const unsure = { reps: Array.from({ length: 5 }, () => ({ value: share(0.8), sd: share(0.3) })), block: null };
    expect(judgeBlock([unsure], usualStageRules)).toBe("stay");
    expect(judgeBlock([{ ...unsure, reps: sure(0.8, 0.8, 0.8, 0.8, 0.8) }], usualStageRules)).toBe("pass");
  });

  it("P17 a passed block goes one stage up, the ball stage stays", () => {
    expect(ladderAfter("slow-rehearsal", 1)).toMatchObject({
      stage: "flow",
      repsInStage: 0,
      blocks: [{ passed: true }],
    });
    expect(ladderAfter("ball", 1)).toMatchObject({ stage: "ball", repsInStage: 5 });
    expect(ladderAfter("flow", 0.7)).toMatchObject({ stage: "flow", repsInStage: 5, blocks: [{ passed: false }] });
  });

  it("P18 under half goes one stage back and the cue up", () => {
    const back = ladderAfter("added-speed", 0.3);
    expect(back).toMatchObject({ stage: "flow", rodBack: false });
    expect(back.cues["arm-level-back"]?.exaggerateBy).toBeGreaterThan(0.35);
    expect(back.lastJudgement).toContain("Back one stage, rod on, cue up one step");
    expect(ladderAfter("slow-rehearsal", 0.3).stage).toBe("slow-rehearsal");
  });

  it("P18 from the ball the rod is on for one passed block, then comes off, then the ball again", () => {
    expect(ladderAfter("ball", 0.3)).toMatchObject({ stage: "rod-off", rodBack: true });
    expect(ladderAfter("ball", 0.3, 1)).toMatchObject({ stage: "rod-off", rodBack: false });
    expect(ladderAfter("ball", 0.3, 1, 1)).toMatchObject({ stage: "ball", rodBack: false });
  });

  it("P19 the ladder is one chain from slow to ball, no rod from rod-off on, and less is told the higher it goes", () => {
    expect(stageIds.map((id) => stages[id].next)).toEqual(["flow", "added-speed", "rod-off", "ball", null]);
    expect(stageIds.map((id) => stages[id].back)).toEqual([null, "slow-rehearsal", "flow", "added-speed", "rod-off"]);
    expect(stageIds.map((id) => stages[id].rod)).toEqual([true, true, true, false, false]);
    const told = stageIds.map((id) => feedbackPlans[stages[id].feedback].answered.length);
    expect(told).toEqual(told.toSorted((a, b) => b - a));
  });

  it("P19 every plan has silent reps in every block of five", () => {
    for (const { answered } of Object.values(feedbackPlans)) expect(answered.length).toBeLessThan(5);
  });
});
