import { metres } from "@overcue/shared-geometry/units";
import type { Cue } from "../cue/start-cue.ts";
import type { PlaceCheckpoint } from "../drill/drill-schema.ts";
import { inCentimetres } from "../view/words.ts";
import type { GolferBook } from "./state.ts";
import { ladderOf, withLadder } from "./targets.ts";
import { without } from "./without.ts";

/**
 * A person puts the cue where they want it (felt minus wanted, metres, signed); that is the yes that going past the cap needs. A proposal that waits for this
 * checkpoint is gone.
 */
export function setByHand(book: GolferBook, checkpoint: PlaceCheckpoint, exaggerateBy: number, by: string): GolferBook {
  const ladder = ladderOf(book);
  const distance = metres(exaggerateBy);
  const cue: Cue = { exaggerateBy: distance, setBy: "person", reason: `Set to ${inCentimetres(distance)} by ${by}.` };
  return withLadder(book, {
    ...ladder,
    cues: { ...ladder.cues, [checkpoint]: cue },
    proposals: without(ladder.proposals, checkpoint),
  });
}
