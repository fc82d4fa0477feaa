import { describe, expect, it } from "vitest";
import { practiceStateSchema, sessionViewSchema, type PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import { takeawayAlone } from "@overcue/server/practice/drill/built-in/takeaway-alone";
import { makeReps, temporaryBook } from "./temporary-book.ts";

const nobody = "00000000-0000-4000-8000-0000000000ff";

describe("commands", () => {
  it.each<[PracticeCommand, RegExp]>([
    [{ do: "void-rep", repId: nobody }, /not in the session/],
    [{ do: "restore-rep", repId: nobody }, /not void/],
    [{ do: "star-rep", repId: nobody, starred: true }, /not in the session/],
    [{ do: "correct-reading", repId: nobody, checkpoint: "arm-level-back", y: 0 }, /not in the session/],
    [{ do: "set-drill", drillId: "nowhere" }, /no drill of that name/],
    [{ do: "set-exaggeration", checkpoint: "top", metres: 0.1 }, /No place on the ground is read/],
    [{ do: "set-wanted", checkpoint: "arm-level-back", band: "toe-line" }, /Only the free drill/],
    [{ do: "accept-proposal" }, /No move of the cue is waiting/],
    [{ do: "decline-proposal" }, /No move of the cue is waiting/],
    [{ do: "answer-felt", repId: nobody, checkpoint: "arm-level-back", band: "toe-line" }, /not in the session/],
    [{ do: "start-retention-test" }, /No test without feedback is due/],
    [{ do: "choose-golfer", golferId: "nobody" }, /no such golfer/],
    [{ do: "delete-golfer", golferId: "nobody", name: "Nobody" }, /no such golfer/],
    [{ do: "set-station", club: "7-iron", toeLine: 0.9, heelLine: 0.6, tolerance: 0.05 }, /behind the toe line/],
    [{ do: "copy-drill", drillId: "nowhere", name: "Mine" }, /no drill of that name/],
    [{ do: "save-drill", json: "{" }, /not JSON: line 1/],
    [{ do: "save-drill", json: JSON.stringify(takeawayAlone) }, /is built in and stays as it is/],
    [{ do: "delete-drill", drillId: "first-third" }, /built-in drill stays/],
  ])("P26 %o is refused and changes nothing", async (command, why) => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 8);
    const before = book.state();
    expect(book.command(command, "Coach")).toEqual({ ok: false, why: expect.stringMatching(why) as string });
    expect(book.state()).toEqual(before);
  });

  it("P26 what is done is told with who did it, and what is told fits the messages", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 13);
    expect(book.command({ do: "void-rep", repId: null }, "Coach A")).toEqual({ ok: true });
    expect(book.state().lastChange).toMatchObject({ by: "Coach A", what: "voided a rep", at: clock.now() });
    expect(practiceStateSchema.parse(book.state())).toEqual(book.state());
    expect(sessionViewSchema.parse(book.sessionView())).toEqual(book.sessionView());
  });

  it("P24 a void rep is listed as void, can be restored, and moves nothing meanwhile", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 11);
    const before = book.state();
    const [id = ""] = await makeReps(book, clock, 1);
    const full = book.state();
    book.command({ do: "void-rep", repId: null }, "Coach");
    expect(book.state()).toMatchObject({ repsInBlock: 4, stage: before.stage, aims: before.aims, repsInSession: 11 });
    expect(book.sessionView().reps.at(-1)).toMatchObject({ repId: id, voided: true });
    book.command({ do: "restore-rep", repId: id }, "Coach");
    expect(book.state()).toMatchObject({ stage: full.stage, aims: full.aims, verdict: full.verdict });
  });

  it("P15 what a coach locked the ground screen cannot unlock, and nobody can move", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 7);
    const move = { do: "set-exaggeration", checkpoint: "arm-level-back", metres: 0.5 } as const;
    book.command({ do: "lock-cue", locked: true }, "Coach");
    expect(book.command({ do: "lock-cue", locked: false }, "ground screen")).toMatchObject({ ok: false });
    expect(book.command(move, "Coach")).toMatchObject({ ok: false });
    expect(book.state().cueLocked).toBe(true);
    expect(book.command({ do: "lock-cue", locked: false }, "Another coach")).toEqual({ ok: true });
    expect(book.command(move, "ground screen")).toEqual({ ok: true });
    const aim = book.state().aims.find(({ checkpoint }) => checkpoint === "arm-level-back");
    expect(aim).toMatchObject({ exaggerateBy: 0.5, reason: "Set to 50 cm by ground screen." });
  });

  it("P1 a drill is copied, edited, imported, chosen and deleted", () => {
    const { book } = temporaryBook();
    expect(book.command({ do: "copy-drill", drillId: "first-third", name: "Mine" }, "Coach")).toEqual({ ok: true });
    const copy = book.state().drills.find(({ builtIn }) => !builtIn);
    expect(copy?.name).toBe("Mine");
    const edited = { ...takeawayAlone, id: copy?.id, name: "Mine, edited" };
    expect(book.command({ do: "save-drill", json: JSON.stringify(edited) }, "Coach")).toEqual({ ok: true });
    expect(book.command({ do: "set-drill", drillId: copy?.id ?? "" }, "Coach")).toEqual({ ok: true });
    expect(book.state().drill).toMatchObject({ id: copy?.id, name: "Mine, edited" });
    expect(book.state().aims.map(({ checkpoint }) => checkpoint)).toEqual(["takeaway", "shaft-level-back"]);
    expect(book.command({ do: "delete-drill", drillId: copy?.id ?? "" }, "Coach")).toEqual({ ok: true });
    expect(book.state().drills.every(({ builtIn }) => builtIn)).toBe(true);
    expect(book.state().drill.id).toBe("high-road-low-road");
  });

  it("P1 the free drill takes any checkpoint and any band", async () => {
    const { book, clock } = temporaryBook();
    book.command({ do: "set-drill", drillId: "free" }, "Coach");
    expect(book.state().aims).toEqual([]);
    expect(book.state().advice.join(" ")).toContain("Choose a checkpoint and a band");
    book.command({ do: "set-wanted", checkpoint: "arm-level-down", band: "ball-line" }, "Coach");
    await makeReps(book, clock, 7);
    const [aim] = book.state().aims;
    expect(aim).toMatchObject({ checkpoint: "arm-level-down", wantedBand: "ball-line", feltBand: "beyond-ball" });
    expect(aim?.exaggerateBy).toBeCloseTo(-0.35, 12);
    book.command({ do: "set-wanted", checkpoint: "arm-level-down", band: null }, "Coach");
    expect(book.state().aims).toEqual([]);
  });

  it("P16 the advice says what is known of the method, and what to expect as common practice", () => {
    const { book } = temporaryBook();
    const advice = book.state().advice.join(" ");
    expect(advice).toContain("no controlled study of it was found");
    expect(advice).toContain("This book measures whether it works for you");
    expect(advice).toContain("Common practice, no source");
  });

  it("P10 a shorter baseline says so", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 4);
    expect(book.state()).toMatchObject({ mode: "baseline", repsInBlock: 4, blockSize: 7 });
    book.command({ do: "start-practice" }, "Coach");
    expect(book.state().mode).toBe("practice");
    expect(book.state().advice).toContain("The baseline rests on 4 reps instead of 7.");
  });
});
