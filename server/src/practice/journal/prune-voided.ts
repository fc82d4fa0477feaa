import { bandSubjectAt } from "@overcue/shared-geometry/checkpoints";
import type { PlaceCheckpoint } from "../drill/drill-schema.ts";
import type { JournalEntry, RepRecord } from "./events.ts";

/** The ids of the reps that are void now: the last word counts, and only of reps that were made before it. */
export function voidedReps(journal: readonly JournalEntry[]): ReadonlySet<string> {
  const made = new Set<string>();
  const voided = new Set<string>();
  for (const { event } of journal) {
    if (event.type === "rep-recorded") made.add(event.rep.id);
    if (event.type === "rep-voided" && made.has(event.repId)) voided.add(event.repId);
    if (event.type === "rep-restored") voided.delete(event.repId);
  }
  return voided;
}

/**
 * The journal as if the voided reps had never been made and the corrected ones had been read right at once: no voided rep, nothing said about one,
 * no correction left to apply. Whatever is folded from this can hold no trace of a voided rep.
 */
export function pruneVoided(journal: readonly JournalEntry[]): readonly JournalEntry[] {
  const voided = voidedReps(journal);
  const corrections = correctionsOf(journal);
  return journal.flatMap((entry): JournalEntry[] => {
    const { event } = entry;
    if (event.type === "rep-recorded") {
      if (voided.has(event.rep.id)) return [];
      const corrected = corrections.get(event.rep.id);
      return corrected && corrected.size > 0
        ? [{ ...entry, event: { ...event, rep: correctRep(event.rep, corrected) } }]
        : [entry];
    }
    if (event.type === "rep-voided" || event.type === "rep-restored" || event.type === "reading-corrected") return [];
    const isAboutRep = event.type === "felt-answered" || event.type === "rep-starred";
    return isAboutRep && voided.has(event.repId) ? [] : [entry];
  });
}

type Corrections = ReadonlyMap<PlaceCheckpoint, number | null>;

function correctionsOf(journal: readonly JournalEntry[]): ReadonlyMap<string, Corrections> {
  const all = new Map<string, Map<PlaceCheckpoint, number | null>>();
  for (const { event } of journal) {
    if (event.type === "rep-recorded") all.set(event.rep.id, new Map());
    if (event.type === "reading-corrected") all.get(event.repId)?.set(event.checkpoint, event.y);
  }
  return all;
}

function correctRep(rep: RepRecord, corrections: Corrections): RepRecord {
  const byCheckpoint: ReadonlyMap<string, number | null> = corrections;
  const checkpoints = rep.checkpoints.flatMap((reading) => {
    const y = byCheckpoint.get(reading.checkpoint);
    if (y === undefined) return [reading];
    if (y === null) return [];
    const key = bandSubjectAt[reading.checkpoint] === "butt-point" ? "buttPoint" : "headPoint";
    const readOut = reading.readOuts[key];
    return [readOut.defined ? { ...reading, readOuts: { ...reading.readOuts, [key]: { ...readOut, y } } } : reading];
  });
  return { ...rep, checkpoints };
}
