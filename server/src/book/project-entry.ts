import type { DatabaseSync } from "node:sqlite";
import type { JournalEntry, RepRecord } from "../practice/journal/events.ts";

/** Writes the entry into the tables that people read; the events that only turn a switch leave no row. Runs inside the journal's transaction. */
export function projectEntry(database: DatabaseSync, { sequence, at, by, golferId, event }: JournalEntry): void {
  const run = (sql: string, ...values: (string | number | null)[]): void => {
    database.prepare(sql).run(...values);
  };
  switch (event.type) {
    case "golfer-added":
      run("INSERT INTO golfers VALUES (?, ?, ?, ?)", event.golfer.id, event.golfer.name, event.golfer.handed, at);
      break;
    case "golfer-handed":
      run("UPDATE golfers SET handed = ? WHERE id = ?", event.handed, golferId);
      break;
    case "session-started":
      run("INSERT INTO sessions VALUES (?, ?, ?)", event.sessionId, golferId, at);
      break;
    case "station-set": {
      const { club, toeLine, heelLine, tolerance } = event.station;
      run(
        "INSERT INTO stations VALUES (?, ?, ?, ?, ?, ?, ?)",
        sequence,
        golferId,
        at,
        club,
        toeLine,
        heelLine,
        tolerance,
      );
      run("INSERT INTO clubs VALUES (?, ?, ?) ON CONFLICT DO NOTHING", golferId, club, at);
      break;
    }
    case "drill-saved":
      run(
        "INSERT OR REPLACE INTO drills VALUES (?, ?, ?, ?)",
        event.drill.id,
        event.drill.name,
        at,
        JSON.stringify(event.drill),
      );
      break;
    case "drill-deleted":
      run("DELETE FROM drills WHERE id = ?", event.drillId);
      break;
    case "rep-recorded":
      projectRep(run, event.rep, golferId, at);
      break;
    case "rep-voided":
    case "rep-restored":
      run("UPDATE reps SET voided = ? WHERE id = ?", event.type === "rep-voided" ? 1 : 0, event.repId);
      break;
    case "rep-starred":
      run("UPDATE reps SET starred = ? WHERE id = ?", event.starred ? 1 : 0, event.repId);
      break;
    case "reading-corrected":
      run(
        "UPDATE readings SET corrected_y = ?, left_out = ? WHERE rep_id = ? AND checkpoint = ?",
        event.y,
        event.y === null ? 1 : 0,
        event.repId,
        event.checkpoint,
      );
      break;
    case "note-added":
      run("INSERT INTO notes VALUES (?, ?, ?, ?, ?)", event.noteId, golferId, at, by, event.text);
      break;
    case "golfer-chosen":
    case "drill-chosen":
    case "wanted-set":
    case "mode-started":
    case "stage-set":
    case "exaggeration-set":
    case "proposals-accepted":
    case "proposals-declined":
    case "cue-locked":
    case "cue-mode-set":
    case "felt-answered":
    case "felt-skipped":
    case "felt-question-set":
    case "feedback-set":
    case "paused-set":
    case "muted-set":
    case "view-set":
      break;
  }
}

function projectRep(
  run: (sql: string, ...values: (string | number | null)[]) => void,
  rep: RepRecord,
  golferId: string | null,
  at: number,
): void {
  run(
    "INSERT INTO reps (id, golfer_id, at, kind, handed, calibration, complete, tempo_ratio, tracked_share) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
    rep.id,
    golferId,
    at,
    rep.kind,
    rep.handed,
    rep.calibration,
    rep.complete ? 1 : 0,
    rep.tempo?.ratio ?? null,
    rep.trackedShare,
  );
  for (const [place, reading] of rep.checkpoints.entries()) {
    const { buttPoint, headPoint } = reading.readOuts;
    const shown = rep.shown.find(({ checkpoint }) => checkpoint === reading.checkpoint);
    run(
      "INSERT INTO readings (rep_id, place, golfer_id, checkpoint, at, sd_ms, butt_y, butt_sd, head_y, head_sd, felt_y) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      rep.id,
      place,
      golferId,
      reading.checkpoint,
      reading.at,
      reading.sdMs,
      buttPoint.defined ? buttPoint.y : null,
      buttPoint.defined ? buttPoint.sdY : null,
      headPoint.defined ? headPoint.y : null,
      headPoint.defined ? headPoint.sdY : null,
      shown?.felt ?? null,
    );
  }
}
