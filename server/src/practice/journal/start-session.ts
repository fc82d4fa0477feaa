import type { RetentionKind } from "@overcue/shared-geometry/wire/practice";
import { practiceSettings } from "../settings.ts";
import type { RelayTime } from "../units.ts";
import type { GolferBook } from "./state.ts";
import { ladderOf, withLadder } from "./targets.ts";

const hour = 3_600_000;

/** A new session: the rep list starts anew, an unfinished block is dropped, and a test without feedback is offered where one is due. */
export function startSession(book: GolferBook, sessionId: string, at: RelayTime): GolferBook {
  const fresh = {
    ...book,
    session: { id: sessionId, startedAt: at, reps: [] },
    verdict: null,
    heldBack: null,
    test: null,
  };
  const mode = book.mode === "retention-test" ? "practice" : book.mode;
  const ladder = ladderOf(book);
  return { ...withLadder(fresh, { ...ladder, block: [] }), mode, offer: testDue(book, at) };
}

/**
 * The test that is due, counted from the last practice rep: the next day's from 12 to 60 hours, the one of 1-2 weeks from 6.5 days on; each once between
 * two practices. Null where nothing is due or no block was ever finished, because then there is nothing to have kept.
 */
export function testDue(book: GolferBook, at: RelayTime): RetentionKind | null {
  const { nextDayFromHours, nextDayToHours, weeksFromHours } = practiceSettings.retention;
  if (book.lastPracticeAt === null || ladderOf(book).blocks.length === 0) return null;
  const hours = (at - book.lastPracticeAt) / hour;
  const last = book.lastPracticeAt;
  const done = (kind: RetentionKind): boolean => book.tests.some((test) => test.kind === kind && test.at > last);
  if (hours >= nextDayFromHours && hours < nextDayToHours && !done("next-day")) return "next-day";
  return hours >= weeksFromHours && !done("after-weeks") ? "after-weeks" : null;
}
