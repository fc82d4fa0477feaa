import type { SessionView } from "@overcue/shared-geometry/wire/practice";
import { placesOf } from "../figures/place.ts";
import type { JournalEntry } from "../journal/events.ts";
import { voidedReps } from "../journal/prune-voided.ts";
import type { GolferBook } from "../journal/state.ts";
import { ladderOf } from "../journal/targets.ts";

/**
 * The books as the session view shows them: the blocks of the drill and club in force (all sessions), the reps of this session. Void reps are listed, since
 * they can be restored, but no figure holds them.
 */
export function viewSession(book: GolferBook, journal: readonly JournalEntry[]): SessionView {
  return {
    blocks: ladderOf(book).blocks.map(({ stage, at, reps, passed, places }) => ({
      stage,
      at,
      reps: reps.length,
      passed,
      places: places.map(({ checkpoint, summary, carryOver, exaggerateBy }) => ({
        checkpoint,
        median: summary.median,
        spread: summary.spread,
        carryOver: carryOver?.value ?? null,
        exaggerateBy,
      })),
    })),
    retentionTests: book.tests.map(({ kind, at, places }) => ({
      kind,
      at,
      places: places.map(({ checkpoint, summary, carryOver }) => ({
        checkpoint,
        median: summary.median,
        spread: summary.spread,
        carryOver: carryOver?.value ?? null,
      })),
    })),
    notes: [...book.notes],
    feltGaps: [...book.feltGaps],
    reps: [...livingReps(book), ...voidReps(book, journal)].toSorted((a, b) => a.at - b.at),
  };
}

function livingReps(book: GolferBook): SessionView["reps"] {
  return (book.session?.reps ?? []).map(({ repId, at, places, leftOut }) => ({
    repId,
    at,
    starred: book.starred.includes(repId),
    voided: false,
    leftOut,
    places: [...places],
  }));
}

function voidReps(book: GolferBook, journal: readonly JournalEntry[]): SessionView["reps"] {
  const voided = voidedReps(journal);
  const since = book.session?.startedAt ?? 0;
  return journal.flatMap(({ event, at, golferId }) => {
    if (event.type !== "rep-recorded" || !voided.has(event.rep.id)) return [];
    if (golferId !== book.golfer.id || at < since) return [];
    return [{ repId: event.rep.id, at, starred: false, voided: true, leftOut: null, places: [...placesOf(event.rep)] }];
  });
}
