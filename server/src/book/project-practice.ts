import type { DatabaseSync } from "node:sqlite";
import { placeCheckpointIds } from "../practice/drill/drill-schema.ts";
import type { GolferBook } from "../practice/journal/state.ts";

/** Writes the blocks and cues that follow from the journal for one golfer, in place of the ones before. */
export function projectPractice(database: DatabaseSync, book: GolferBook): void {
  const { id } = book.golfer;
  database.prepare("DELETE FROM blocks WHERE golfer_id = ?").run(id);
  database.prepare("DELETE FROM cues WHERE golfer_id = ?").run(id);
  const insertBlock = database.prepare("INSERT INTO blocks VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
  const insertCue = database.prepare("INSERT INTO cues VALUES (?, ?, ?, ?, ?, ?)");
  for (const [key, ladder] of Object.entries(book.ladders)) {
    for (const [index, { at, stage, passed, places }] of ladder.blocks.entries())
      for (const { checkpoint, summary, carryOver, exaggerateBy } of places)
        insertBlock.run(
          id,
          key,
          index + 1,
          at,
          stage,
          passed ? 1 : 0,
          checkpoint,
          summary.median,
          summary.spread,
          carryOver?.value ?? null,
          carryOver?.sd ?? null,
          exaggerateBy,
        );
    for (const checkpoint of placeCheckpointIds) {
      const cue = ladder.cues[checkpoint];
      if (cue) insertCue.run(id, key, checkpoint, cue.exaggerateBy, cue.setBy, cue.reason);
    }
  }
}
