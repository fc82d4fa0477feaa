import type { JournalEntry, PracticeEvent } from "./events.ts";
import { pruneVoided } from "./prune-voided.ts";
import { emptyPractice, type Practice } from "./state.ts";
import { step } from "./step.ts";

/** The practice after the whole journal: voided reps taken out, corrections taken in, the rest folded in order. */
export function replay(journal: readonly JournalEntry[]): Practice {
  return pruneVoided(journal).reduce(step, emptyPractice);
}

/**
 * The practice after one more entry; `journal` holds it as its last. The same as `replay(journal)`, only quicker: a whole replay is needed where the
 * entry changes what came before.
 */
export function advance(practice: Practice, journal: readonly JournalEntry[]): Practice {
  const entry = journal.at(-1);
  if (!entry) return practice;
  return changesThePast.has(entry.event.type) ? replay(journal) : step(practice, entry);
}

/** Events that change what earlier entries say, or that are dropped where the rep they speak of is void. */
const changesThePast: ReadonlySet<PracticeEvent["type"]> = new Set([
  "rep-voided",
  "rep-restored",
  "reading-corrected",
  "felt-answered",
  "rep-starred",
]);
