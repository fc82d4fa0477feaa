import { newGolfer, newLadder } from "./new-golfer.ts";
import { isBookEvent, type BookEvent, type GolferEvent, type JournalEntry } from "./events.ts";
import { answerFelt } from "./answer-felt.ts";
import { startMode } from "./start-mode.ts";
import { startSession } from "./start-session.ts";
import type { GolferBook, Practice } from "./state.ts";
import { takeProposals } from "./take-proposals.ts";
import { takeRep } from "./take-rep.ts";
import { ladderOf, withLadder } from "./targets.ts";
import { stages } from "../stage/stages.ts";
import type { RelayTime } from "../units.ts";
import { setByHand } from "./set-by-hand.ts";

/** What is known, and what happened next: what is known then. Entries about a golfer who is not there change nothing. */
export function step(practice: Practice, { event, golferId, at, by }: JournalEntry): Practice {
  if (isBookEvent(event)) return stepBook(practice, event, golferId);
  const book = golferId === null ? undefined : practice.golfers[golferId];
  return book ? withGolfer(practice, stepGolfer(book, practice, { event, at, by })) : practice;
}

function stepBook(practice: Practice, event: BookEvent, golferId: string | null): Practice {
  switch (event.type) {
    case "drill-saved":
      return { ...practice, drills: { ...practice.drills, [event.drill.id]: event.drill } };
    case "drill-deleted": {
      const { [event.drillId]: deleted, ...drills } = practice.drills;
      return deleted ? { ...practice, drills } : practice;
    }
    case "paused-set":
      return { ...practice, paused: event.paused };
    case "muted-set":
      return { ...practice, muted: event.muted };
    case "view-set":
      return { ...practice, view: event.view };
    case "golfer-added":
      return withGolfer(practice, newGolfer(event.golfer));
    case "golfer-chosen":
      return golferId !== null && practice.golfers[golferId] ? { ...practice, current: golferId } : practice;
  }
}

function withGolfer(practice: Practice, book: GolferBook): Practice {
  return { ...practice, golfers: { ...practice.golfers, [book.golfer.id]: book } };
}

interface Happened {
  readonly event: GolferEvent;
  readonly at: RelayTime;
  readonly by: string;
}

function stepGolfer(book: GolferBook, practice: Practice, { event, at, by }: Happened): GolferBook {
  switch (event.type) {
    case "golfer-handed":
      return { ...book, golfer: { ...book.golfer, handed: event.handed } };
    case "session-started":
      return startSession(book, event.sessionId, at);
    case "station-set":
      return changePlace(book, { station: event.station });
    case "drill-chosen":
      return changePlace(book, { drillId: event.drillId });
    case "wanted-set": {
      const { [event.checkpoint]: before, ...others } = book.wanted;
      const wanted = event.band === null ? others : { ...others, [event.checkpoint]: event.band };
      // Another aim is another ladder: what was learnt for the old band says nothing about the new one.
      return before === (event.band ?? undefined) ? book : withLadder({ ...book, wanted }, newLadder);
    }
    case "rep-recorded":
      return takeRep(book, practice, event.rep, at);
    case "rep-starred":
      return {
        ...book,
        starred: event.starred
          ? [...book.starred.filter((id) => id !== event.repId), event.repId]
          : book.starred.filter((id) => id !== event.repId),
      };
    case "mode-started":
      return startMode(book, event.mode);
    case "stage-set":
      return withLadder(book, {
        ...ladderOf(book),
        stage: event.stage,
        rodBack: false,
        feedback: stages[event.stage].feedback,
        repsInStage: 0,
        block: [],
      });
    case "exaggeration-set":
      return setByHand(book, event.checkpoint, event.metres, by);
    case "proposals-accepted":
      return takeProposals(book, by);
    case "proposals-declined":
      return withLadder(book, { ...ladderOf(book), proposals: {} });
    case "cue-locked":
      return { ...book, lockedBy: event.locked ? by : null };
    case "cue-mode-set":
      return { ...book, cueMode: event.cueMode };
    case "felt-answered":
      return answerFelt(book, event.repId, event.checkpoint, event.band);
    case "felt-skipped":
      return book.heldBack ? { ...book, verdict: book.heldBack.verdict, heldBack: null } : book;
    case "felt-question-set":
      return { ...book, feltQuestion: event.asked };
    case "feedback-set":
      return withLadder(book, { ...ladderOf(book), feedback: event.feedback });
    case "note-added":
      return { ...book, notes: [...book.notes, { at, by, text: event.text }] };
    case "rep-voided":
    case "rep-restored":
    case "reading-corrected":
      // Taken care of before the fold: see `pruneVoided`.
      return book;
  }
}

/** Another club, station or drill: the last answer and a test under way belonged to the old one. */
function changePlace(book: GolferBook, change: Partial<Pick<GolferBook, "station" | "drillId">>): GolferBook {
  const next = { ...book, ...change, verdict: null, heldBack: null, test: null };
  const finished = next.baselines[next.station.club]?.finished ?? false;
  return { ...next, mode: finished ? "practice" : "baseline" };
}
