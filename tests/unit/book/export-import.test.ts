import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BookError } from "@overcue/server/book/book-error";
import { openBookStore } from "@overcue/server/book/book-store";
import { exportBook } from "@overcue/server/book/export-book";
import { importBook } from "@overcue/server/book/import-book";
import { packTrajectory, unpackTrajectory } from "@overcue/server/book/pack-trajectory";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { effectsOf, makeReps, temporaryBook, temporaryFolder } from "./temporary-book.ts";

/** A book with two golfers, reps, a void rep, a note and a drill of their own, exported. */
async function exported(): Promise<{ readonly text: string; readonly file: string; readonly state: unknown }> {
  const { book, clock, file } = temporaryBook();
  const [first] = await makeReps(book, clock, 14);
  book.command({ do: "void-rep", repId: first ?? null }, "Coach");
  book.command({ do: "note", text: "held well" }, "Coach");
  book.command({ do: "copy-drill", drillId: "first-third", name: "Mine" }, "Coach");
  book.command({ do: "add-golfer", name: "Second", handed: "left" }, "Coach");
  await makeReps(book, clock, 3);
  const state = { ...book.state(), lastChange: null };
  book.close();
  const store = openBookStore(file);
  const text = exportBook(store);
  store.close();
  return { text, file, state };
}

describe("export and import", () => {
  it("P30 an exported and imported book is the same book, and exports the same text", async () => {
    const { text, state } = await exported();
    const file = join(temporaryFolder(), "other.book");
    const store = openBookStore(file);
    expect(importBook(store, text)).toEqual({ golfers: 2, reps: 17 });
    expect(exportBook(store)).toBe(text);
    store.close();
    const { clock } = temporaryBook();
    const book = openPracticeBook(file, effectsOf(clock));
    expect({ ...book.state(), lastChange: null }).toEqual(state);
    book.close();
  });

  it("P30 a copy taken while the book is in use is the same book", async () => {
    const { text, file } = await exported();
    const store = openBookStore(file);
    const copy = join(temporaryFolder(), "copy.book");
    await store.copyTo(copy);
    store.close();
    const copied = openBookStore(copy);
    expect(exportBook(copied)).toBe(text);
    copied.close();
  });

  it.each([
    ["not JSON", (text: string) => text.slice(0, -30), /not JSON: line \d+/],
    [
      "a wrong word",
      (text: string) => text.replace('"kind":"rehearsal"', '"kind":"rehearsed"'),
      /line 7, field journal\.3\.event\.rep\.kind/,
    ],
    [
      "a text for a number",
      (text: string) => text.replace('"sequence":5', '"sequence":"5"'),
      /line 8, field journal\.4\.sequence/,
    ],
    [
      "a rep twice",
      (text: string) => {
        const lines = text.split("\n");
        const line = lines.find((each) => each.includes("rep-recorded")) ?? "";
        return text.replace(line, `${line}\n${line.replace(/"sequence":\d+/, '"sequence":4.5')}`);
      },
      /line \d+, field journal\.\d+\.sequence/,
    ],
    ["a newer format", (text: string) => text.replace("overcue-book/1", "overcue-book/2"), /line 2, field format/],
  ] as const)("P30 a bad file names the place and imports nothing: %s", async (_, spoil, place) => {
    const { text } = await exported();
    const store = openBookStore(join(temporaryFolder(), "other.book"));
    const spoilt = spoil(text);
    expect(spoilt).not.toBe(text);
    expect(() => importBook(store, spoilt)).toThrow(BookError);
    expect(() => importBook(store, spoilt)).toThrow(place);
    expect(store.readJournal()).toEqual([]);
    store.close();
  });

  it("P30 what is there already is not imported a second time, and nothing else is either", async () => {
    const { text, file } = await exported();
    const store = openBookStore(file);
    expect(() => importBook(store, text)).toThrow(/The golfer Golfer is in the book .* already/);
    expect(exportBook(store)).toBe(text);
    store.close();
  });

  it("P30 a book in use takes in another's golfers and keeps its own", async () => {
    const { text } = await exported();
    const { book, clock, file } = temporaryBook();
    await makeReps(book, clock, 2);
    const own = book.state().golfer;
    book.close();
    const store = openBookStore(file);
    importBook(store, text);
    store.close();
    const again = openPracticeBook(file, effectsOf(clock));
    expect(again.state().golfers).toHaveLength(3);
    expect(again.command({ do: "choose-golfer", golferId: own.id }, "Coach")).toEqual({ ok: true });
    expect(again.state().repsInSession).toBe(2);
    again.close();
  });

  it("P30 a trajectory comes back to half a unit, and packs the same again", () => {
    const coordinate = fc.double({ min: -5, max: 5, noNaN: true });
    const sample = fc.tuple(
      fc.double({ min: 0, max: 9000, noNaN: true }),
      coordinate,
      coordinate,
      coordinate,
      coordinate,
      coordinate,
    );
    fc.assert(
      fc.property(fc.array(sample, { maxLength: 50 }), (samples) => {
        const trajectory = samples.map(([t, ...rest]): (typeof samples)[number] => [1_777_000_000_000 + t, ...rest]);
        const packed = packTrajectory(trajectory);
        const back = unpackTrajectory(packed, trajectory.length);
        const halfUnits = [0.0501, 5.1e-5, 5.1e-5, 5.1e-5, 5.1e-6, 5.1e-6];
        for (const [row, values] of trajectory.entries())
          for (const [column, value] of values.entries())
            expect(Math.abs((back[row]?.[column] ?? Infinity) - value)).toBeLessThanOrEqual(halfUnits[column] ?? 0);
        expect(unpackTrajectory(packTrajectory(back), back.length)).toEqual(back);
      }),
      { numRuns: 50 },
    );
  });
});
