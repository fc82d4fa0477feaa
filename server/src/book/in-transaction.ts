import type { DatabaseSync } from "node:sqlite";

/** Runs `work` in one transaction that is on the disk when this returns; whatever it throws, nothing of it remains. */
export function inTransaction<T>(database: DatabaseSync, work: () => T): T {
  database.exec("BEGIN IMMEDIATE");
  try {
    const result = work();
    database.exec("COMMIT");
    return result;
  } catch (thrown) {
    // SQLite has rolled back by itself after a full disk or an I/O error.
    if (database.isTransaction) database.exec("ROLLBACK");
    throw thrown;
  }
}
