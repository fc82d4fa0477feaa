import type { DatabaseSync } from "node:sqlite";

const tablesAboutGolfers = [
  "journal",
  "trajectories",
  "clubs",
  "stations",
  "sessions",
  "reps",
  "readings",
  "notes",
  "blocks",
  "cues",
] as const;

/** Deletes the golfer's rows from every table. Where the name signed something about somebody else, the signature is emptied. */
export function deleteGolferRows(database: DatabaseSync, golferId: string, name: string): void {
  for (const table of tablesAboutGolfers) database.prepare(`DELETE FROM ${table} WHERE golfer_id = ?`).run(golferId);
  database.prepare("DELETE FROM golfers WHERE id = ?").run(golferId);
  for (const table of ["journal", "notes"] as const)
    database.prepare(`UPDATE ${table} SET by = '' WHERE by = ?`).run(name);
}
