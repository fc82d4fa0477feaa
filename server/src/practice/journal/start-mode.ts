import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { newLadder } from "./new-golfer.ts";
import type { GolferBook, Ladder } from "./state.ts";
import { ladderOf, withLadder } from "./targets.ts";

/**
 * Baseline: begins anew for this club, and what was learnt against the old one is put aside (the stage stays). Practice: a baseline that was begun
 * counts as it is. Test: five reps without feedback. An unfinished block is dropped.
 */
export function startMode(book: GolferBook, mode: PracticeState["mode"]): GolferBook {
  const plain: GolferBook = { ...book, mode, verdict: null, heldBack: null, test: null, offer: null };
  const { club } = book.station;
  switch (mode) {
    case "baseline":
      return {
        ...plain,
        baselines: { ...book.baselines, [club]: { reps: [], finished: false } },
        ladders: Object.fromEntries(
          Object.entries(book.ladders).map(([key, ladder]) => [
            key,
            key.startsWith(`${club} `) ? onNewBaseline(ladder) : ladder,
          ]),
        ),
      };
    case "practice": {
      const reps = book.baselines[club]?.reps ?? [];
      return { ...plain, baselines: { ...book.baselines, [club]: { reps, finished: true } } };
    }
    case "retention-test":
      return {
        ...withLadder(plain, { ...ladderOf(book), block: [] }),
        test: { kind: book.offer ?? "next-day", reps: [] },
      };
  }
}

function onNewBaseline(ladder: Ladder): Ladder {
  const cues = Object.fromEntries(Object.entries(ladder.cues).filter(([, cue]) => cue.setBy === "person"));
  return { ...newLadder, stage: ladder.stage, feedback: ladder.feedback, cues, blocks: ladder.blocks };
}
