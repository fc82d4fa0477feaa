import type { Acknowledgement } from "@overcue/shared-geometry/wire/events";
import type { PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import type { Rep } from "@overcue/shared-geometry/wire/rep";
import type { PracticeBook } from "../practice-book.ts";
import { decide } from "../practice/journal/decide.ts";
import { describeCommand } from "../practice/journal/describe-command.ts";
import { demoGolfer, demoGolferName, lastPerson } from "../practice/journal/demo-golfer.ts";
import type { Golfer, JournalEntry, PracticeEvent } from "../practice/journal/events.ts";
import { voidedReps } from "../practice/journal/prune-voided.ts";
import { advance, replay } from "../practice/journal/replay.ts";
import type { GolferBook, Practice } from "../practice/journal/state.ts";
import { feltPlace, targetsOf } from "../practice/journal/targets.ts";
import { practiceSettings } from "../practice/settings.ts";
import { viewSession } from "../practice/view/view-session.ts";
import { viewState } from "../practice/view/view-state.ts";
import { BookError } from "./book-error.ts";
import type { OpenSettings } from "./open-database.ts";
import { openBookStore, type BookStore, type StoredTrajectory } from "./book-store.ts";

/** What the book takes from outside. */
export interface BookEffects {
  /** The relay's clock, milliseconds since the epoch. */
  readonly now: () => number;
  /** A new random id (UUID). */
  readonly newId: () => string;
}

const itself = "practice book";
const hour = 3_600_000;

/**
 * The practice behind one door: every change is a journal entry, durably written before it counts.
 * @throws BookError with one sentence where the file cannot be used.
 */
export function openPracticeBook(file: string, effects: BookEffects, settings?: OpenSettings): PracticeBook {
  const store = openBookStore(file, settings);
  try {
    return new JournaledBook(store, effects);
  } catch (thrown) {
    store.close();
    throw thrown;
  }
}

class JournaledBook implements PracticeBook {
  readonly #store: BookStore;
  readonly #effects: BookEffects;
  readonly #listeners = new Set<() => void>();
  #journal: readonly JournalEntry[];
  #practice: Practice;
  #repIds: Set<string>;
  #lastCommand: { by: string; what: string; at: number } | null = null;

  constructor(store: BookStore, effects: BookEffects) {
    this.#store = store;
    this.#effects = effects;
    this.#journal = store.readJournal();
    this.#practice = replay(this.#journal);
    this.#repIds = idsOf(this.#journal);
    this.#ensureGolfer();
    this.#ensureSession();
  }

  addRep(rep: Rep): Promise<void> {
    return new Promise((resolve) => {
      this.#takeRep(rep);
      resolve();
    });
  }

  state() {
    this.#lookAtClock();
    return viewState(this.#practice, this.#book(), {
      revision: this.#journal.at(-1)?.sequence ?? 0,
      lastChange: this.#lastCommand,
    });
  }

  showDemo(shown: boolean): void {
    const current = this.#book().golfer;
    if (shown === (current.invented === true)) return;
    if (shown) {
      this.#write(
        this.#demo(),
        itself,
        [
          { type: "golfer-chosen" },
          { type: "stage-set", stage: "slow-rehearsal" },
          { type: "mode-started", mode: "baseline" },
        ],
        [],
      );
    } else this.#write(this.#person(), itself, [{ type: "golfer-chosen" }], []);
    this.#ensureSession();
    const what = shown ? "shows the demo golfer" : "ended the demonstration";
    this.#lastCommand = { by: "phone", what, at: this.#effects.now() };
    this.#tell();
  }

  command(command: PracticeCommand, by: string): Acknowledgement {
    try {
      return command.do === "delete-golfer" ? this.#deleteGolfer(command, by) : this.#decide(command, by);
    } catch (thrown) {
      if (thrown instanceof BookError) return { ok: false, why: thrown.message };
      throw thrown;
    }
  }

  sessionView() {
    return viewSession(this.#book(), this.#journal);
  }

  onChange(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => {
      this.#listeners.delete(listener);
    };
  }

  close(): void {
    this.#store.close();
  }

  #takeRep(rep: Rep): void {
    if (this.#repIds.has(rep.id)) return;
    // What is demonstrated is in the invented golfer's book and nowhere else, whoever is chosen; what was filmed never is.
    const golferId = rep.calibration === "demo" ? this.#demo() : this.#person();
    this.#ensureSession(golferId);
    const book = this.#book(golferId);
    const { trajectory, ...figures } = rep;
    const shown = targetsOf(book, this.#practice).map((target) => ({
      checkpoint: target.checkpoint,
      felt: feltPlace(target),
    }));
    const events: PracticeEvent[] = [];
    // A golfer nobody has said anything about takes over the hand of the station.
    if (book.repsInAll === 0 && rep.handed !== book.golfer.handed)
      events.push({ type: "golfer-handed", handed: rep.handed });
    events.push({ type: "rep-recorded", rep: { ...figures, shown } });
    this.#write(golferId, itself, events, [{ repId: rep.id, golferId, trajectory }]);
    this.#tell();
  }

  #decide(command: Exclude<PracticeCommand, { do: "delete-golfer" }>, by: string): Acknowledgement {
    this.#ensureSession();
    const decision = decide(command, {
      practice: this.#practice,
      book: this.#book(),
      by,
      newId: this.#effects.newId,
      voided: voidedReps(this.#journal),
    });
    if (!decision.ok) return decision;
    this.#write(decision.golferId, by, decision.events, []);
    this.#ensureSession();
    this.#lastCommand = { by, what: describeCommand(command), at: this.#effects.now() };
    this.#tell();
    return { ok: true };
  }

  #deleteGolfer({ golferId, name }: Extract<PracticeCommand, { do: "delete-golfer" }>, by: string): Acknowledgement {
    const book = this.#practice.golfers[golferId];
    if (!book) return { ok: false, why: "There is no such golfer in the book." };
    if (book.golfer.name !== name)
      return { ok: false, why: "The name does not match the golfer's: type it as it stands in the book." };
    const wasShown = this.#practice.current === golferId;
    this.#store.deleteGolfer(golferId, name);
    this.#journal = this.#store.readJournal();
    this.#practice = replay(this.#journal);
    this.#repIds = idsOf(this.#journal);
    this.#ensureGolfer();
    // Whoever is left and was chosen last comes next; in a person's place that is never the invented golfer.
    if (wasShown && book.golfer.invented !== true && this.#book().golfer.invented === true)
      this.#write(this.#person(), itself, [{ type: "golfer-chosen" }], []);
    this.#ensureSession();
    this.#lastCommand = { by: by === name ? "" : by, what: "deleted a golfer", at: this.#effects.now() };
    this.#tell();
    return { ok: true };
  }

  /** First on the disk, then in memory: a failed write leaves both as they were. */
  #write(
    golferId: string | null,
    by: string,
    events: readonly PracticeEvent[],
    trajectories: readonly StoredTrajectory[],
  ): void {
    const at = this.#effects.now();
    const first = (this.#journal.at(-1)?.sequence ?? 0) + 1;
    const entries = events.map((event, index) => ({ sequence: first + index, at, by, golferId, event }));
    let practice = this.#practice;
    let journal = this.#journal;
    for (const entry of entries) {
      journal = [...journal, entry];
      practice = advance(practice, journal);
    }
    const book = golferId === null ? undefined : practice.golfers[golferId];
    const changed = book && figuresChanged(this.#practice.golfers[book.golfer.id], book);
    this.#store.append(entries, trajectories, changed ? [book] : []);
    this.#journal = journal;
    this.#practice = practice;
    for (const { event } of entries) if (event.type === "rep-recorded") this.#repIds.add(event.rep.id);
  }

  #book(golferId = this.#practice.current): GolferBook {
    const book = golferId === null ? undefined : this.#practice.golfers[golferId];
    if (!book) throw new Error("a practice book always has a golfer");
    return book;
  }

  #ensureGolfer(): void {
    const { current, golfers } = this.#practice;
    if (current !== null && golfers[current]) return;
    this.#write(this.#person(), itself, [{ type: "golfer-chosen" }], []);
  }

  /** The id of the person who practised last; of a new one where the book knows nobody. */
  #person(): string {
    const known = lastPerson(this.#practice, this.#journal);
    return known ?? this.#add({ name: "Golfer", handed: "right" });
  }

  /** The id of the invented golfer, who is added when first shown. */
  #demo(): string {
    const known = demoGolfer(this.#practice);
    return known?.id ?? this.#add({ name: demoGolferName, handed: "right", invented: true });
  }

  #add(who: Omit<Golfer, "id">): string {
    const golfer = { id: this.#effects.newId(), ...who };
    this.#write(golfer.id, itself, [{ type: "golfer-added", golfer }], []);
    return golfer.id;
  }

  /** A golfer who comes back after a long pause begins a new session. */
  #ensureSession(golferId = this.#practice.current): void {
    const { golfer, session } = this.#book(golferId);
    const last = this.#journal.findLast(({ golferId }) => golferId === golfer.id);
    const pause = this.#effects.now() - (last?.at ?? 0);
    if (session && pause <= practiceSettings.session.newAfterHours * hour) return;
    this.#write(golfer.id, itself, [{ type: "session-started", sessionId: this.#effects.newId() }], []);
  }

  /** A relay that ran overnight offers the next day's test to whoever looks first. A book that cannot be written shows what it has. */
  #lookAtClock(): void {
    try {
      this.#ensureSession();
    } catch (thrown) {
      if (!(thrown instanceof BookError)) throw thrown;
    }
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}

function idsOf(journal: readonly JournalEntry[]): Set<string> {
  return new Set(journal.flatMap(({ event }) => (event.type === "rep-recorded" ? [event.rep.id] : [])));
}

/** Whether blocks or cues differ, so that their tables must be written anew. */
function figuresChanged(before: GolferBook | undefined, after: GolferBook): boolean {
  return Object.entries(after.ladders).some(([key, ladder]) => {
    const old = before?.ladders[key];
    return old?.blocks !== ladder.blocks || old.cues !== ladder.cues;
  });
}
