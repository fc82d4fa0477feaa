import { backup, type DatabaseSync } from "node:sqlite";
import { journalEntrySchema, type JournalEntry } from "../practice/journal/events.ts";
import { BookError, toBookError } from "./book-error.ts";
import { inTransaction } from "./in-transaction.ts";
import { openDatabase, type OpenSettings } from "./open-database.ts";
import { packTrajectory, unpackTrajectory, type Trajectory } from "./pack-trajectory.ts";
import type { GolferBook } from "../practice/journal/state.ts";
import { projectEntry } from "./project-entry.ts";
import { projectPractice } from "./project-practice.ts";
import { deleteGolferRows } from "./delete-golfer-rows.ts";

/** A rep's path, kept beside the journal because it is bulky. */
export interface StoredTrajectory {
  readonly repId: string;
  readonly golferId: string;
  readonly trajectory: Trajectory;
}

/** The journal on the disk. Every method that writes has written durably when it returns, or has thrown a BookError and written nothing. */
export interface BookStore {
  readonly file: string;
  readJournal(): readonly JournalEntry[];
  readTrajectories(): readonly StoredTrajectory[];
  /** `books`: the golfers whose blocks and cues follow from these entries. */
  append(
    entries: readonly JournalEntry[],
    trajectories: readonly StoredTrajectory[],
    books: readonly GolferBook[],
  ): void;
  /** Takes out every row about the golfer, and the name where it signed something, and rewrites the file without them. */
  deleteGolfer(golferId: string, name: string): void;
  /** Copies the book, as it stands, into another file while it stays in use (SQLite's online backup). */
  copyTo(copy: string): Promise<void>;
  close(): void;
}

/** @throws BookError where the book cannot be opened. */
export function openBookStore(file: string, settings?: OpenSettings): BookStore {
  const database = openDatabase(file, settings);
  const guarded = <T>(work: () => T): T => {
    try {
      return work();
    } catch (thrown) {
      throw toBookError(thrown, file);
    }
  };
  return {
    file,
    readJournal: () => guarded(() => readJournal(database, file)),
    readTrajectories: () => guarded(() => readTrajectories(database)),
    append: (entries, trajectories, books) => {
      guarded(() => {
        inTransaction(database, () => {
          for (const entry of entries) appendEntry(database, entry);
          for (const each of trajectories) appendTrajectory(database, each);
          for (const book of books) projectPractice(database, book);
        });
      });
    },
    deleteGolfer: (golferId, name) => {
      guarded(() => {
        inTransaction(database, () => {
          deleteGolferRows(database, golferId, name);
        });
        // The rows are gone; now the pages that held them, in the file and in its log.
        database.exec("VACUUM");
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
      });
    },
    copyTo: async (copy) => {
      try {
        await backup(database, copy);
      } catch (thrown) {
        throw toBookError(thrown, copy);
      }
    },
    close: () => {
      if (database.isOpen) database.close();
    },
  };
}

function appendEntry(database: DatabaseSync, { sequence, at, by, golferId, event }: JournalEntry): void {
  database
    .prepare("INSERT INTO journal (sequence, at, by, golfer_id, type, event) VALUES (?, ?, ?, ?, ?, ?)")
    .run(sequence, at, by, golferId, event.type, JSON.stringify(event));
  projectEntry(database, { sequence, at, by, golferId, event });
}

function appendTrajectory(database: DatabaseSync, { repId, golferId, trajectory }: StoredTrajectory): void {
  database
    .prepare("INSERT INTO trajectories (rep_id, golfer_id, samples, packed) VALUES (?, ?, ?, ?)")
    .run(repId, golferId, trajectory.length, packTrajectory(trajectory));
}

function readJournal(database: DatabaseSync, file: string): readonly JournalEntry[] {
  const rows = database.prepare("SELECT sequence, at, by, golfer_id, event FROM journal ORDER BY sequence").all();
  return rows.map((row) => {
    const event: unknown = JSON.parse(String(row["event"]));
    const parsed = journalEntrySchema.safeParse({
      sequence: row["sequence"],
      at: row["at"],
      by: row["by"],
      golferId: row["golfer_id"],
      event,
    });
    if (parsed.success) return parsed.data;
    throw new BookError(
      "corrupt",
      `The book ${file} holds an entry (number ${String(row["sequence"])}) that cannot be read: put a copy of it in its place; it was left as it is.`,
    );
  });
}

function readTrajectories(database: DatabaseSync): readonly StoredTrajectory[] {
  return database
    .prepare("SELECT rep_id, golfer_id, samples, packed FROM trajectories ORDER BY rowid")
    .all()
    .map((row) => {
      const { packed } = row;
      if (!(packed instanceof Uint8Array)) throw new TypeError("a trajectory is not a blob");
      return {
        repId: String(row["rep_id"]),
        golferId: String(row["golfer_id"]),
        trajectory: unpackTrajectory(packed, Number(row["samples"])),
      };
    });
}
