import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { flatToSteepGolfer } from "../../fakes/golfer-model.ts";
import { makeReps, temporaryBook } from "./temporary-book.ts";

/** Which of these texts stand anywhere in the book's files. */
function foundIn(file: string, texts: readonly string[]): readonly string[] {
  const bytes = ["", "-wal", "-shm"].flatMap((end) => (existsSync(file + end) ? [readFileSync(file + end)] : []));
  return texts.filter((text) => bytes.some((each) => each.includes(text)));
}

describe("deleting a golfer", () => {
  it("P32 leaves nothing of the golfer in the file, and all of the others", async () => {
    const { book, clock, file } = temporaryBook();
    const stays = book.state().golfer;
    const kept = await makeReps(book, clock, 3);
    book.command({ do: "add-golfer", name: "Quixandra Vellamont", handed: "right" }, "Coach");
    const { id } = book.state().golfer;
    const reps = await makeReps(book, clock, 20, { ...flatToSteepGolfer, sd: 0.0212345 });
    book.command({ do: "note", text: "a very private remark" }, "Coach");
    book.command({ do: "choose-golfer", golferId: stays.id }, "Coach");
    book.command({ do: "note", text: "signed by the other" }, "Quixandra Vellamont");
    const texts = ["Quixandra Vellamont", id, "a very private remark", "0.0212345", ...reps];
    expect(foundIn(file, texts)).toEqual(texts);

    expect(book.command({ do: "delete-golfer", golferId: id, name: "Quixandra" }, "Coach")).toMatchObject({
      ok: false,
    });
    expect(foundIn(file, texts)).toEqual(texts);
    expect(book.command({ do: "delete-golfer", golferId: id, name: "Quixandra Vellamont" }, "Coach")).toEqual({
      ok: true,
    });

    expect(foundIn(file, texts)).toEqual([]);
    expect(foundIn(file, kept)).toEqual(kept);
    expect(book.state().golfers).toEqual([stays]);
    expect(book.sessionView().notes).toMatchObject([{ text: "signed by the other", by: "" }]);
    await makeReps(book, clock, 1);
    expect(book.state().repsInSession).toBe(4);
  });

  it("P32 the last golfer may be deleted; a new one takes the place", async () => {
    const { book, clock } = temporaryBook();
    await makeReps(book, clock, 2);
    const { id, name } = book.state().golfer;
    expect(book.command({ do: "delete-golfer", golferId: id, name }, "Coach")).toEqual({ ok: true });
    expect(book.state().golfer.id).not.toBe(id);
    expect(book.state().repsInSession).toBe(0);
    expect(book.command({ do: "delete-golfer", golferId: id, name }, "Coach")).toMatchObject({ ok: false });
  });
});
