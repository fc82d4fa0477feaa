import { placeCheckpointIds } from "../drill/drill-schema.ts";
import type { GolferBook } from "./state.ts";
import { ladderOf, withLadder } from "./targets.ts";

/** A person's yes: every waiting proposal becomes the cue. */
export function takeProposals(book: GolferBook, by: string): GolferBook {
  const ladder = ladderOf(book);
  const cues = { ...ladder.cues };
  for (const checkpoint of placeCheckpointIds) {
    const proposal = ladder.proposals[checkpoint];
    if (!proposal) continue;
    cues[checkpoint] = {
      exaggerateBy: proposal.exaggerateBy,
      setBy: "adaptive",
      reason: `${proposal.reason} Agreed by ${by}.`,
    };
  }
  return withLadder(book, { ...ladder, cues, proposals: {} });
}
