import { DatabaseSync } from "node:sqlite";
import { BookError, explain, toBookError } from "./book-error.ts";
import { migrations } from "./migrations.ts";

/** "OvrC": marks the file as a practice book (https://sqlite.org/pragma.html#pragma_application_id). */
const applicationId = 0x4f767243;

export interface OpenSettings {
  /** How long to wait for another program that holds the file, milliseconds. */
  readonly waitMs: number;
  /** The most pages of 4096 bytes that the file may grow to, as on a full disk; null where only the disk sets an end. */
  readonly maxPages: number | null;
}

const usual: OpenSettings = { waitMs: 2000, maxPages: null };

/**
 * Opens the book, makes it where there is none, and brings an older one up to date. What is committed is on the disk: write-ahead log, synchronous
 * FULL. Deleted content is overwritten (secure_delete).
 * @throws BookError with one sentence: locked, damaged, newer, not a book, unwritable. The file is then as it was.
 */
export function openDatabase(file: string, settings: OpenSettings = usual): DatabaseSync {
  let database: DatabaseSync | null = null;
  try {
    database = new DatabaseSync(file, { timeout: settings.waitMs });
    checkIdentity(database, file);
    checkHealth(database, file);
    database.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON;");
    migrate(database);
    if (settings.maxPages !== null) database.exec(`PRAGMA max_page_count = ${settings.maxPages}`);
    return database;
  } catch (thrown) {
    if (database?.isOpen) database.close();
    throw toBookError(thrown, file);
  }
}

/** One number out of a PRAGMA. */
function pragma(database: DatabaseSync, name: string): number {
  const row = database.prepare(`PRAGMA ${name}`).get();
  const value = row?.[name];
  if (typeof value !== "number") throw new BookError("unknown", `SQLite does not answer PRAGMA ${name}.`);
  return value;
}

function checkIdentity(database: DatabaseSync, file: string): void {
  const tables = database.prepare("SELECT count(*) AS count FROM sqlite_schema").get()?.["count"];
  const id = pragma(database, "application_id");
  if (id !== applicationId && tables !== 0) throw explain("not-a-book", file);
  if (pragma(database, "user_version") > migrations.length) throw explain("newer", file);
}

function checkHealth(database: DatabaseSync, file: string): void {
  const answer = database.prepare("PRAGMA quick_check(1)").get()?.["quick_check"];
  if (answer !== "ok") throw explain("corrupt", file);
}

function migrate(database: DatabaseSync): void {
  const version = pragma(database, "user_version");
  if (version === migrations.length) return;
  database.exec("BEGIN IMMEDIATE");
  try {
    for (const migration of migrations.slice(version)) database.exec(migration);
    database.exec(`PRAGMA application_id = ${applicationId}; PRAGMA user_version = ${migrations.length};`);
    database.exec("COMMIT");
  } catch (thrown) {
    database.exec("ROLLBACK");
    throw thrown;
  }
}
