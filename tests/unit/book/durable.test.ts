import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { describe, expect, it } from "vitest";
import { openBookStore } from "@overcue/server/book/book-store";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { flatToSteepGolfer, makeRep } from "../../fakes/golfer-model.ts";
import { effectsOf, HandClock, makeReps, temporaryBook, temporaryFolder } from "./temporary-book.ts";

const writer = join(import.meta.dirname, "write-until-killed.run.ts");

/** Starts the writer, kills it (SIGKILL) after so many acknowledgements, and answers every id that it acknowledged. */
async function acknowledgedBeforeKill(file: string, reps: number): Promise<readonly string[]> {
  const child = spawn(process.execPath, [writer, file], { stdio: ["ignore", "pipe", "inherit"] });
  const ended = once(child, "exit");
  const ids: string[] = [];
  for await (const line of createInterface({ input: child.stdout })) {
    ids.push(line);
    if (ids.length === reps) child.kill("SIGKILL");
  }
  await ended;
  return ids;
}

function repIds(file: string): readonly string[] {
  const store = openBookStore(file);
  const ids = store.readJournal().flatMap(({ event }) => (event.type === "rep-recorded" ? [event.rep.id] : []));
  store.close();
  return ids;
}

describe("durability", () => {
  it("P27 every acknowledged rep is there after a kill, time after time", async () => {
    const file = join(temporaryFolder(), "practice.book");
    const acknowledged: string[] = [];
    for (const reps of [1, 7, 23]) {
      acknowledged.push(...(await acknowledgedBeforeKill(file, reps)));
      const there = new Set(repIds(file));
      expect(acknowledged.filter((id) => !there.has(id))).toEqual([]);
    }
    expect(acknowledged.length).toBeGreaterThanOrEqual(31);
  });

  it("P27 the practice after opening again is the practice before", async () => {
    const { book, clock, file } = temporaryBook();
    await makeReps(book, clock, 19);
    book.command({ do: "note", text: "slower" }, "Coach");
    const state = book.state();
    const session = book.sessionView();
    book.close();
    const again = openPracticeBook(file, effectsOf(clock));
    expect({ ...again.state(), lastChange: null }).toEqual({ ...state, lastChange: null });
    expect(again.sessionView()).toEqual(session);
    again.close();
  });

  it("P28 the same rep again changes nothing, in the same run and in the next", async () => {
    const { book, clock, file } = temporaryBook();
    await makeReps(book, clock, 9);
    const rep = makeRep(flatToSteepGolfer, book.state(), clock.now(), "00000000-0000-4000-8000-000000000001");
    await book.addRep(rep);
    const { revision, repsInSession } = book.state();
    await book.addRep(rep);
    book.close();
    const again = openPracticeBook(file, effectsOf(clock));
    await again.addRep(rep);
    expect(again.state()).toMatchObject({ revision, repsInSession });
    again.close();
  });

  it("P27 listeners hear of a rep after it is written, and of nothing after they have gone", async () => {
    const clock = new HandClock();
    const { book } = temporaryBook(clock);
    const heard: number[] = [];
    const stop = book.onChange(() => heard.push(book.state().repsInSession));
    await makeReps(book, clock, 2);
    stop();
    await makeReps(book, clock, 1);
    expect(heard).toEqual([1, 2]);
  });
});
