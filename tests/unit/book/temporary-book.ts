import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { openPracticeBook, type BookEffects } from "@overcue/server/book/open-practice-book";
import type { PracticeBook } from "@overcue/server/practice-book";
import { flatToSteepGolfer, makeRep, type GolferModel } from "../../fakes/golfer-model.ts";

/** A clock that stands still until it is moved; milliseconds since the epoch. */
export class HandClock {
  #now = Date.UTC(2026, 4, 1, 9);
  now = (): number => this.#now;
  advance(milliseconds: number): void {
    this.#now += milliseconds;
  }
}

export const hours = (count: number): number => count * 3_600_000;

/** A folder that is gone after the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "overcue-book-"));
  onTestFinished(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  return folder;
}

export const effectsOf = (clock: HandClock): BookEffects => ({ now: clock.now, newId: randomUUID });

/** A new book in a temporary folder, closed after the test. */
export function temporaryBook(clock = new HandClock()): {
  readonly book: PracticeBook;
  readonly clock: HandClock;
  readonly file: string;
} {
  const file = join(temporaryFolder(), "practice.book");
  const book = openPracticeBook(file, effectsOf(clock));
  onTestFinished(() => {
    book.close();
  });
  return { book, clock, file };
}

/** So many reps of a golfer who follows the cue, twenty seconds apart. Answers their ids. */
export async function makeReps(
  book: PracticeBook,
  clock: HandClock,
  count: number,
  golfer: GolferModel = flatToSteepGolfer,
): Promise<readonly string[]> {
  const ids: string[] = [];
  for (let rep = 0; rep < count; rep++) {
    clock.advance(20_000);
    const id = randomUUID();
    await book.addRep(makeRep(golfer, book.state(), clock.now(), id));
    ids.push(id);
  }
  return ids;
}
