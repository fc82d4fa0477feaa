import { carryOverOf } from "../figures/carry-over.ts";
import type { RelayTime } from "../units.ts";
import type { GolferBook, Practice, RetentionTest } from "./state.ts";
import { layoutOf, summariseCheckpoint, targetsOf } from "./targets.ts";

/** The test without feedback is done: what is left of the change, checkpoint by checkpoint, and back to practice. */
export function closeTest(book: GolferBook, practice: Practice, at: RelayTime): GolferBook {
  const { test } = book;
  if (!test) return { ...book, mode: "practice" };
  const places = targetsOf(book, practice).flatMap(({ checkpoint, baseline, change }): RetentionTest["places"] => {
    const summary = summariseCheckpoint(test.reps, checkpoint, layoutOf(book));
    if (!summary) return [];
    const place = { y: summary.median, sd: summary.sd };
    return [
      { checkpoint, summary, carryOver: baseline && change !== null ? carryOverOf(place, baseline, change) : null },
    ];
  });
  return { ...book, mode: "practice", test: null, tests: [...book.tests, { kind: test.kind, at, places }] };
}
