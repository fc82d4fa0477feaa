import type { PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import { builtInDrills, freeDrill } from "../drill/built-in/built-in-drills.ts";
import { findDrill } from "../drill/drill-in-force.ts";
import { placeCheckpointIds, type PlaceCheckpoint } from "../drill/drill-schema.ts";
import { parseDrill } from "../drill/parse-drill.ts";
import { stages } from "../stage/stages.ts";
import type { PracticeEvent } from "./events.ts";
import type { GolferBook, Practice } from "./state.ts";
import { ladderOf } from "./targets.ts";

/** What is to be written down, about which golfer (null: about the book as a whole); or why not, in one sentence. */
export type Decision =
  | { readonly ok: true; readonly golferId: string | null; readonly events: readonly PracticeEvent[] }
  | { readonly ok: false; readonly why: string };

/** The commands that change what is known. Deleting a golfer is the store's business: it leaves nothing to know. */
export type DecidedCommand = Exclude<PracticeCommand, { do: "delete-golfer" }>;

interface Asked {
  readonly practice: Practice;
  readonly book: GolferBook;
  readonly by: string;
  readonly newId: () => string;
  /** The ids of void reps, which the practice itself no longer knows. */
  readonly voided: ReadonlySet<string>;
}

const no = (why: string): Decision => ({ ok: false, why });

/** From what a person asks to what happened, or a refusal. Nothing is changed here. */
export function decide(command: DecidedCommand, asked: Asked): Decision {
  const { practice, book, by, newId } = asked;
  const own = (...events: PracticeEvent[]): Decision => ({ ok: true, golferId: book.golfer.id, events });
  const all = (...events: PracticeEvent[]): Decision => ({ ok: true, golferId: null, events });
  switch (command.do) {
    case "void-rep":
      return voidRep(command.repId, asked);
    case "restore-rep":
      return asked.voided.has(command.repId)
        ? own({ type: "rep-restored", repId: command.repId })
        : no("This rep is not void.");
    case "star-rep":
      return knowsRep(book, command.repId)
        ? own({ type: "rep-starred", repId: command.repId, starred: command.starred })
        : no("This rep is not in the session.");
    case "correct-reading":
      return correctReading(command, book);
    case "set-stage":
      return own({ type: "stage-set", stage: command.stage });
    case "next-stage": {
      const { next } = stages[ladderOf(book).stage];
      return next ? own({ type: "stage-set", stage: next }) : no("The ball stage is the last one.");
    }
    case "set-drill":
      return findDrill(command.drillId, practice.drills)
        ? own({ type: "drill-chosen", drillId: command.drillId })
        : no("There is no drill of that name.");
    case "set-wanted":
      return setWanted(command, book);
    case "set-exaggeration":
      return setExaggeration(command, book);
    case "accept-proposal":
      return hasProposal(book) ? own({ type: "proposals-accepted" }) : no("No move of the cue is waiting.");
    case "decline-proposal":
      return hasProposal(book) ? own({ type: "proposals-declined" }) : no("No move of the cue is waiting.");
    case "lock-cue":
      return book.lockedBy !== null && book.lockedBy !== by && by === groundScreen
        ? no(`The cue was locked by ${book.lockedBy}: it is unlocked from a coach's page.`)
        : own({ type: "cue-locked", locked: command.locked });
    case "set-cue-mode":
      return own({ type: "cue-mode-set", cueMode: command.cueMode });
    case "answer-felt": {
      const checkpoint = placeCheckpoint(command.checkpoint);
      if (!checkpoint) return no("No place on the ground is read at that checkpoint.");
      return knowsRep(book, command.repId)
        ? own({ type: "felt-answered", repId: command.repId, checkpoint, band: command.band })
        : no("This rep is not in the session.");
    }
    case "skip-felt":
      return own({ type: "felt-skipped" });
    case "ask-felt":
      return own({ type: "felt-question-set", asked: command.asked });
    case "set-feedback":
      return own({ type: "feedback-set", feedback: command.feedback });
    case "pause":
      return all({ type: "paused-set", paused: command.paused });
    case "mute":
      return all({ type: "muted-set", muted: command.muted });
    case "view":
      return all({ type: "view-set", view: command.view });
    case "note":
      return own({ type: "note-added", noteId: newId(), text: command.text });
    case "start-baseline":
      return own({ type: "mode-started", mode: "baseline" });
    case "start-practice":
      return own({ type: "mode-started", mode: "practice" });
    case "start-retention-test":
      return book.offer
        ? own({ type: "mode-started", mode: "retention-test" })
        : no("No test without feedback is due: it counts the day after a practice block, and again after a week.");
    case "add-golfer": {
      const golfer = { id: newId(), name: command.name, handed: command.handed };
      return { ok: true, golferId: golfer.id, events: [{ type: "golfer-added", golfer }, { type: "golfer-chosen" }] };
    }
    case "choose-golfer":
      return practice.golfers[command.golferId]
        ? { ok: true, golferId: command.golferId, events: [{ type: "golfer-chosen" }] }
        : no("There is no such golfer in the book.");
    case "set-station": {
      const { club, toeLine, heelLine, tolerance } = command;
      return heelLine > toeLine
        ? own({ type: "station-set", station: { club, toeLine, heelLine, tolerance } })
        : no("The heel line must lie behind the toe line: measure both from the ball line.");
    }
    case "copy-drill":
      return copyDrill(command.drillId, command.name, asked);
    case "save-drill": {
      const parsed = parseDrill(command.json);
      if (!parsed.ok) return no(parsed.why);
      return isBuiltIn(parsed.drill.id)
        ? no(`The drill "${parsed.drill.id}" is built in and stays as it is: give the copy another id.`)
        : all({ type: "drill-saved", drill: parsed.drill });
    }
    case "delete-drill":
      if (isBuiltIn(command.drillId)) return no("A built-in drill stays.");
      return practice.drills[command.drillId]
        ? all({ type: "drill-deleted", drillId: command.drillId })
        : no("There is no drill of that name.");
  }
}

/** How the ground screen signs; every other name is a coach's. */
export const groundScreen = "ground screen";

const placeCheckpoint = (checkpoint: string): PlaceCheckpoint | null =>
  placeCheckpointIds.find((id) => id === checkpoint) ?? null;

const isBuiltIn = (drillId: string): boolean => builtInDrills.some(({ id }) => id === drillId);

const knowsRep = (book: GolferBook, repId: string): boolean =>
  book.session?.reps.some((rep) => rep.repId === repId) ?? false;

const hasProposal = (book: GolferBook): boolean => Object.keys(ladderOf(book).proposals).length > 0;

function voidRep(repId: string | null, { book, voided }: Asked): Decision {
  const chosen = repId ?? book.session?.reps.at(-1)?.repId;
  if (chosen === undefined) return no("There is no rep in this session to void.");
  if (voided.has(chosen)) return no("This rep is void already.");
  return knowsRep(book, chosen)
    ? { ok: true, golferId: book.golfer.id, events: [{ type: "rep-voided", repId: chosen }] }
    : no("This rep is not in the session.");
}

function correctReading(
  { repId, checkpoint, y }: Extract<PracticeCommand, { do: "correct-reading" }>,
  book: GolferBook,
): Decision {
  const rep = book.session?.reps.find((each) => each.repId === repId);
  const place = rep?.places.find((each) => each.checkpoint === checkpoint);
  if (!rep) return no("This rep is not in the session.");
  if (!place) return no("Nothing was read there, so there is nothing to correct.");
  return {
    ok: true,
    golferId: book.golfer.id,
    events: [{ type: "reading-corrected", repId, checkpoint: place.checkpoint, y }],
  };
}

function setWanted({ checkpoint, band }: Extract<PracticeCommand, { do: "set-wanted" }>, book: GolferBook): Decision {
  const chosen = placeCheckpoint(checkpoint);
  if (!chosen) return no("No place on the ground is read at that checkpoint.");
  if (book.drillId !== freeDrill)
    return no("Only the free drill's bands are chosen this way: copy and edit the drill.");
  return { ok: true, golferId: book.golfer.id, events: [{ type: "wanted-set", checkpoint: chosen, band }] };
}

function setExaggeration(
  { checkpoint, metres }: Extract<PracticeCommand, { do: "set-exaggeration" }>,
  book: GolferBook,
): Decision {
  const chosen = placeCheckpoint(checkpoint);
  if (!chosen) return no("No place on the ground is read at that checkpoint.");
  if (book.lockedBy !== null) return no(`The cue is locked by ${book.lockedBy}: unlock it first.`);
  return { ok: true, golferId: book.golfer.id, events: [{ type: "exaggeration-set", checkpoint: chosen, metres }] };
}

function copyDrill(drillId: string, name: string, { practice, newId }: Asked): Decision {
  const drill = findDrill(drillId, practice.drills);
  if (!drill) return no("There is no drill of that name.");
  return {
    ok: true,
    golferId: null,
    events: [{ type: "drill-saved", drill: { ...drill, id: `own-${newId()}`, name } }],
  };
}
