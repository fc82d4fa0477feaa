import { describe, expect, it } from "vitest";
import { flatToSteepGolfer, makeRep } from "../../fakes/golfer-model.ts";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { effectsOf, hours, makeReps, temporaryBook } from "./temporary-book.ts";

describe("when to speak", () => {
  it("P19 nothing is told during the baseline; then reps 1, 2, 3 and 5 of a block, and the screen knows beforehand", async () => {
    const { book, clock } = temporaryBook();
    const told: boolean[] = [];
    const announced: boolean[] = [];
    for (let rep = 0; rep < 12; rep++) {
      announced.push(book.state().nextRepAnswered);
      await makeReps(book, clock, 1);
      told.push(book.state().verdict !== null);
    }
    expect(told.slice(0, 7)).toEqual(Array.from({ length: 7 }, () => false));
    expect(told.slice(7)).toEqual([true, true, true, false, true]);
    expect(announced).toEqual(told);
  });

  it("P19 a summary of five tells the medians of the block, once", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 7);
    book.command({ do: "set-feedback", feedback: "summary-of-five" }, "Coach");
    await makeReps(book, clock, 4);
    expect(book.state().verdict).toBeNull();
    const [id] = await makeReps(book, clock, 1);
    const { verdict } = book.state();
    expect(verdict).toMatchObject({ kind: "summary", repId: id });
    expect(verdict?.places.find(({ checkpoint }) => checkpoint === "arm-level-back")?.y).toBeCloseTo(0.05, 9);
    book.command({ do: "set-feedback", feedback: "silent" }, "Coach");
    await makeReps(book, clock, 5);
    expect(book.state().verdict).toBeNull();
  });

  it("P20 inside the larger of the reading's error and 15 % of the wanted change nothing is corrected", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 7);
    // Wanted at lead arm level back is -5 to 15 cm; the change is 35 cm from -30, so 15 % of it is 5.25 cm.
    const tellOf = async (y: number, sd: number) => {
      const golfer = { ...flatToSteepGolfer, sd, carryOver: 0, habit: { "arm-level-back": y } };
      await makeReps(book, clock, 1, golfer);
      const { verdict } = book.state();
      book.command({ do: "void-rep", repId: null }, "Coach");
      return verdict;
    };
    expect(await tellOf(0.2, 0.01)).toMatchObject({ kind: "inside", places: [{ inWanted: false }] });
    expect((await tellOf(0.2, 0.01))?.sentence).toContain("Same again.");
    expect(await tellOf(0.21, 0.01)).toMatchObject({ kind: "answer" });
    expect((await tellOf(0.21, 0.01))?.sentence).toMatch(/^Back: ball to toes\. Feel: back .*\.$/);
    expect(await tellOf(0.2, 0.1)).toMatchObject({ kind: "inside", places: [{ inWanted: null }] });
  });

  it("P20 an unsure band is told as unsure, with its two candidates", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 7);
    await makeReps(book, clock, 1, {
      ...flatToSteepGolfer,
      carryOver: 0,
      habit: { "arm-level-back": -0.05 },
      sd: 0.04,
    });
    expect(book.state().verdict?.sentence).toMatch(/^Back: unsure: .* or .*\./);
  });

  it("P21 the answer waits for what it felt like, and the gap is kept", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 7);
    book.command({ do: "ask-felt", asked: true }, "Coach");
    const [id = ""] = await makeReps(book, clock, 1);
    expect(book.state()).toMatchObject({ verdict: null, feltAnswerWanted: id, feltAnswerCheckpoint: "arm-level-back" });
    const answer = { do: "answer-felt", repId: id, checkpoint: "arm-level-back", band: "heel-line" } as const;
    expect(book.command(answer, "ground screen")).toEqual({ ok: true });
    expect(book.state()).toMatchObject({ verdict: { repId: id }, feltAnswerWanted: null });
    const [gap] = book.sessionView().feltGaps;
    expect(gap).toMatchObject({ repId: id, checkpoint: "arm-level-back" });
    expect(gap?.felt).toBeCloseTo(0.875, 12);
    expect(gap?.measured).toBeCloseTo(0.05, 12);
    await makeReps(book, clock, 1);
    expect(book.command({ do: "skip-felt" }, "ground screen")).toEqual({ ok: true });
    expect(book.state()).toMatchObject({ feltAnswerWanted: null, feltAnswerCheckpoint: null });
    expect(book.state().verdict).not.toBeNull();
    book.command({ do: "void-rep", repId: id }, "Coach");
    expect(book.sessionView().feltGaps).toEqual([]);
  });

  it("P9 an uncalibrated rep is answered with its mark and moves nothing", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 8);
    const before = book.state();
    const rep = makeRep(flatToSteepGolfer, before, clock.now(), "00000000-0000-4000-8000-000000000001");
    await book.addRep({ ...rep, calibration: "uncalibrated" });
    const after = book.state();
    expect(after).toMatchObject({ repsInBlock: before.repsInBlock, aims: before.aims, repsInSession: 9 });
    expect(after.verdict?.sentence).toMatch(/^Not counted: uncalibrated\./);
    expect(after.advice[0]).toBe("1 rep is kept but not counted: camera not calibrated.");
  });
});

describe("tests without feedback", () => {
  it("P22 the next day one is offered by itself, done without answers, and kept as the real score", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 12);
    clock.advance(hours(4));
    await makeReps(book, clock, 1);
    expect(book.state().retentionOffer).toBeNull();
    clock.advance(hours(20));
    // Nobody has touched anything since yesterday: looking is enough.
    expect(book.state().retentionOffer).toMatchObject({ kind: "next-day" });
    expect(book.command({ do: "start-retention-test" }, "ground screen")).toEqual({ ok: true });
    const kept = { ...flatToSteepGolfer, habit: { "arm-level-back": -0.09, "arm-level-down": 0.15 } };
    for (let rep = 0; rep < 5; rep++) {
      expect(book.state()).toMatchObject({
        mode: "retention-test",
        repsInBlock: rep,
        blockSize: 5,
        nextRepAnswered: false,
      });
      await makeReps(book, clock, 1, kept);
      expect(book.state().verdict).toBeNull();
    }
    expect(book.state()).toMatchObject({ mode: "practice", retentionOffer: null });
    const [test] = book.sessionView().retentionTests;
    expect(test?.kind).toBe("next-day");
    // -0.30 to -0.09 of the 0.35 that were wanted; 0.35 to 0.15 of the 0.40.
    expect(test?.places.map(({ carryOver }) => carryOver?.toFixed(3))).toEqual(["0.600", "0.500"]);
  });

  it("P22 after a week another is offered, once, also where the relay was started anew", async () => {
    const { book, clock, file } = temporaryBook();
    await makeReps(book, clock, 12);
    book.close();
    clock.advance(hours(24 * 8));
    const again = openPracticeBook(file, effectsOf(clock));
    expect(again.state().retentionOffer).toMatchObject({ kind: "after-weeks" });
    again.command({ do: "start-retention-test" }, "ground screen");
    await makeReps(again, clock, 5);
    expect(again.sessionView().retentionTests).toMatchObject([{ kind: "after-weeks" }]);
    clock.advance(hours(24));
    again.command({ do: "mute", muted: false }, "ground screen");
    expect(again.state().retentionOffer).toBeNull();
    again.close();
  });

  it("P22 nothing is offered before a block was finished", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 10);
    clock.advance(hours(24));
    book.command({ do: "mute", muted: false }, "ground screen");
    expect(book.state().retentionOffer).toBeNull();
    expect(book.command({ do: "start-retention-test" }, "Coach")).toMatchObject({ ok: false });
  });
});
