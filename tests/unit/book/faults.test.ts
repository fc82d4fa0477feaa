import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { describe, expect, it } from "vitest";
import { BookError } from "@overcue/server/book/book-error";
import { openBookStore } from "@overcue/server/book/book-store";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { effectsOf, type HandClock, makeReps, temporaryBook, temporaryFolder } from "./temporary-book.ts";

/** What was thrown, so that fault and sentence can both be looked at. */
async function thrownBy(work: () => unknown): Promise<unknown> {
  try {
    await work();
  } catch (thrown) {
    return thrown;
  }
  return null;
}

async function expectFault(fault: string, sentence: RegExp, work: () => unknown): Promise<void> {
  const thrown = await thrownBy(work);
  expect(thrown).toBeInstanceOf(BookError);
  expect(thrown).toMatchObject({ fault, message: expect.stringMatching(sentence) as string });
}

/** A book with eight reps, closed. */
async function closedBook(): Promise<{ readonly file: string; readonly clock: HandClock }> {
  const { book, clock, file } = temporaryBook();
  await makeReps(book, clock, 8);
  book.close();
  return { file, clock };
}

describe("P29 faults of the file", () => {
  it("P29 a full disk: said, nothing lost, and the rep is taken when there is room again", async () => {
    const { file, clock } = await closedBook();
    const pages = readFileSync(file).length / 4096;
    const tight = openPracticeBook(file, effectsOf(clock), { waitMs: 100, maxPages: pages });
    let taken = 0;
    await expectFault("full", /disk is full.*nothing in it is lost.*free some space/, async () => {
      for (; taken < 500; taken++) await makeReps(tight, clock, 1);
    });
    expect(tight.state().repsInSession).toBe(8 + taken);
    tight.close();
    const roomy = openPracticeBook(file, effectsOf(clock));
    expect(roomy.state().repsInSession).toBe(8 + taken);
    await makeReps(roomy, clock, 1);
    expect(roomy.state().repsInSession).toBe(9 + taken);
    roomy.close();
  });

  it("P29 a file held by another program: said, and the rep is taken afterwards", async () => {
    const { file, clock } = await closedBook();
    const book = openPracticeBook(file, effectsOf(clock), { waitMs: 20, maxPages: null });
    const holder = new DatabaseSync(file);
    holder.exec("BEGIN IMMEDIATE");
    await expectFault("locked", /held by another program: close that program/, () => makeReps(book, clock, 1));
    expect(book.command({ do: "pause", paused: true }, "Coach")).toMatchObject({ ok: false });
    expect(book.state()).toMatchObject({ repsInSession: 8, paused: false });
    holder.exec("COMMIT");
    holder.close();
    await makeReps(book, clock, 1);
    expect(book.state().repsInSession).toBe(9);
    book.close();
  });

  it("P29 a second writer: said, and what the first wrote stays", async () => {
    const { file, clock } = await closedBook();
    const first = openPracticeBook(file, effectsOf(clock));
    const second = openPracticeBook(file, effectsOf(clock));
    await makeReps(first, clock, 1);
    await expectFault("other-writer", /Another relay has written into the book/, () => makeReps(second, clock, 1));
    first.close();
    second.close();
    const again = openPracticeBook(file, effectsOf(clock));
    expect(again.state().repsInSession).toBe(9);
    again.close();
  });

  it("P29 a damaged file: refused, left byte for byte as it was", async () => {
    const { file, clock } = await closedBook();
    const bytes = readFileSync(file);
    bytes.fill(0x5a, 4096, bytes.length - 4096);
    writeFileSync(file, bytes);
    await expectFault("corrupt", /is damaged and was left as it is/, () => openPracticeBook(file, effectsOf(clock)));
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it("P29 a file that is no book: refused, left byte for byte as it was", async () => {
    const folder = temporaryFolder();
    const text = join(folder, "shopping.txt");
    writeFileSync(text, "milk, eggs and a great many other things\n".repeat(40));
    const foreign = join(folder, "foreign.sqlite");
    const database = new DatabaseSync(foreign);
    database.exec("CREATE TABLE recipes (name TEXT)");
    database.close();
    for (const file of [text, foreign]) {
      const bytes = readFileSync(file);
      await expectFault("not-a-book", /is not a practice book and was left as it is/, () => openBookStore(file));
      expect(readFileSync(file).equals(bytes)).toBe(true);
    }
  });

  it("P29 a newer book: says which side is old, left byte for byte as it was", async () => {
    const { file, clock } = await closedBook();
    const database = new DatabaseSync(file);
    database.exec("PRAGMA user_version = 99");
    database.close();
    const bytes = readFileSync(file);
    await expectFault("newer", /written by a newer version of Overcue: update Overcue/, () =>
      openPracticeBook(file, effectsOf(clock)),
    );
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it("P29 a folder that is not there", async () => {
    await expectFault("unwritable", /cannot be opened for writing/, () =>
      openBookStore(join(temporaryFolder(), "nowhere", "practice.book")),
    );
  });
});
