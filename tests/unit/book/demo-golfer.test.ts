import { randomUUID } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it, onTestFinished } from "vitest";
import { openBookStore } from "@overcue/server/book/book-store";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import type { PracticeBook } from "@overcue/server/practice-book";
import { demoGolferName } from "@overcue/server/practice/journal/demo-golfer";
import { flatToSteepGolfer, makeRep } from "../../fakes/golfer-model.ts";
import { seededRandom } from "../../scenes/random.ts";
import type { HandClock } from "./temporary-book.ts";
import { effectsOf, makeReps, temporaryBook } from "./temporary-book.ts";

/** A rep whose content depends on its seed alone: made by habit, as in a baseline, whoever is shown. */
const byHabit = (book: PracticeBook) => ({ ...book.state(), mode: "baseline" as const, aims: [] });

async function addRep(book: PracticeBook, clock: HandClock, calibration: "demo" | "station", seed: number) {
  const golfer = { ...flatToSteepGolfer, random: seededRandom(seed) };
  await book.addRep({ ...makeRep(golfer, byHabit(book), clock.now(), randomUUID()), calibration });
}

/** What is known of whoever practises, without ids and revisions. */
function figures(book: PracticeBook) {
  const { golfer, aims, mode, stage, repsInBlock, repsInStage, repsInSession, pattern, feedback, proposals } =
    book.state();
  return {
    name: golfer.name,
    aims,
    mode,
    stage,
    repsInBlock,
    repsInStage,
    repsInSession,
    pattern,
    feedback,
    proposals,
  };
}

type Step =
  | { readonly do: "demo-on" | "demo-off" | "demo-rep" }
  | { readonly do: "rep"; readonly seed: number }
  | { readonly do: "other-golfer" };

const anyStep: fc.Arbitrary<Step> = fc.oneof(
  fc.constantFrom<Step>({ do: "demo-on" }, { do: "demo-off" }, { do: "demo-rep" }, { do: "demo-rep" }),
  fc.record({ do: fc.constant("rep" as const), seed: fc.integer({ min: 1, max: 1000 }) }),
  fc.record({ do: fc.constant("rep" as const), seed: fc.integer({ min: 1, max: 1000 }) }),
  fc.constant<Step>({ do: "other-golfer" }),
);

async function run(steps: readonly Step[], withDemo: boolean) {
  const { book, clock, file } = temporaryBook();
  for (const [index, step] of steps.entries()) {
    clock.advance(20_000);
    switch (step.do) {
      case "demo-on":
      case "demo-off":
        if (withDemo) book.showDemo(step.do === "demo-on");
        break;
      case "demo-rep":
        if (withDemo) await addRep(book, clock, "demo", index + 1);
        break;
      case "rep":
        await addRep(book, clock, "station", step.seed);
        break;
      case "other-golfer":
        book.command({ do: "add-golfer", name: `Golfer ${index}`, handed: "right" }, "Coach");
        break;
    }
  }
  book.showDemo(false);
  return { book, file };
}

describe("the demo golfer's book", () => {
  it("P34 in any order of events a demonstrated rep is the invented golfer's and a filmed one never is; people's figures are as if nothing had been demonstrated", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyStep, { maxLength: 40 }), async (steps) => {
        const { book, file } = await run(steps, true);
        const twin = await run(steps, false);
        expect(figures(book)).toEqual(figures(twin.book));
        book.close();
        twin.book.close();
        const store = openBookStore(file);
        const journal = store.readJournal();
        store.close();
        const invented = new Set(
          journal.flatMap(({ event }) =>
            event.type === "golfer-added" && event.golfer.invented === true ? [event.golfer.id] : [],
          ),
        );
        expect(invented.size).toBeLessThanOrEqual(1);
        for (const { event, golferId } of journal) {
          if (event.type !== "rep-recorded") continue;
          expect(invented.has(golferId ?? "")).toBe(event.rep.calibration === "demo");
        }
      }),
      { numRuns: 25 },
    );
  });

  it("P34 each demonstration begins with a baseline, goes on to practice, and says that the golfer is invented", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 9);
    const before = figures(book);
    for (let show = 0; show < 2; show++) {
      book.showDemo(true);
      expect(book.state()).toMatchObject({ mode: "baseline", repsInBlock: 0, blockSize: 7, stage: "slow-rehearsal" });
      expect(book.state().golfer).toMatchObject({ name: demoGolferName, invented: true });
      expect(demoGolferName).toContain("invented");
      for (let rep = 0; rep < 7; rep++) {
        expect(book.state().repsInBlock).toBe(rep);
        clock.advance(20_000);
        await addRep(book, clock, "demo", rep + 1);
      }
      expect(book.state()).toMatchObject({ mode: "practice", repsInBlock: 0 });
      expect(book.state().aims.every(({ baseline }) => baseline !== null)).toBe(true);
      book.showDemo(false);
    }
    expect(figures(book)).toEqual(before);
  });

  it("P34 a relay that was stopped during a demonstration opens with it, and the next phone without one ends it", async () => {
    const { book, clock, file } = temporaryBook();
    await makeReps(book, clock, 2);
    book.showDemo(true);
    book.close();
    const again = openPracticeBook(file, effectsOf(clock));
    onTestFinished(() => {
      again.close();
    });
    expect(again.state().golfer.invented).toBe(true);
    again.showDemo(false);
    expect(again.state()).toMatchObject({ golfer: { name: "Golfer" }, repsInBlock: 2 });
    // Deleting the last person leaves a new one, never the invented golfer in a person's place.
    const { id, name } = again.state().golfer;
    expect(again.command({ do: "delete-golfer", golferId: id, name }, "Coach")).toEqual({ ok: true });
    expect(again.state().golfer.invented).toBeUndefined();
  });
});
