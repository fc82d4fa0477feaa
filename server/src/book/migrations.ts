/**
 * The book's tables, one migration a version; a book of an older version is brought up step by step, in one transaction. Never change one that was
 * released: add the next.
 *
 * `journal` is the truth and everything else can be made again from it, but for `trajectories`, which hold what is too bulky for an event. The other tables are there for
 * people who open the file with any SQLite tool: one row a thing, lengths in metres, times in milliseconds since the epoch.
 */
export const migrations: readonly string[] = [
  `
  CREATE TABLE journal (
    sequence INTEGER PRIMARY KEY,
    at REAL NOT NULL,
    by TEXT NOT NULL,
    golfer_id TEXT,
    type TEXT NOT NULL,
    event TEXT NOT NULL
  ) STRICT;
  CREATE INDEX journal_golfer ON journal (golfer_id);
  CREATE TABLE trajectories (
    rep_id TEXT PRIMARY KEY,
    golfer_id TEXT NOT NULL,
    samples INTEGER NOT NULL,
    packed BLOB NOT NULL
  ) STRICT;
  CREATE TABLE golfers (id TEXT PRIMARY KEY, name TEXT NOT NULL, handed TEXT NOT NULL, added_at REAL NOT NULL) STRICT;
  CREATE TABLE clubs (golfer_id TEXT NOT NULL, club TEXT NOT NULL, first_used_at REAL NOT NULL, PRIMARY KEY (golfer_id, club)) STRICT;
  CREATE TABLE stations (
    sequence INTEGER PRIMARY KEY,
    golfer_id TEXT NOT NULL,
    at REAL NOT NULL,
    club TEXT NOT NULL,
    toe_line REAL NOT NULL,
    heel_line REAL NOT NULL,
    tolerance REAL NOT NULL
  ) STRICT;
  CREATE TABLE drills (id TEXT PRIMARY KEY, name TEXT NOT NULL, saved_at REAL NOT NULL, drill TEXT NOT NULL) STRICT;
  CREATE TABLE sessions (id TEXT PRIMARY KEY, golfer_id TEXT NOT NULL, started_at REAL NOT NULL) STRICT;
  CREATE TABLE reps (
    id TEXT PRIMARY KEY,
    golfer_id TEXT NOT NULL,
    at REAL NOT NULL,
    kind TEXT NOT NULL,
    handed TEXT NOT NULL,
    calibration TEXT NOT NULL,
    complete INTEGER NOT NULL,
    tempo_ratio REAL,
    tracked_share REAL NOT NULL,
    voided INTEGER NOT NULL DEFAULT 0,
    starred INTEGER NOT NULL DEFAULT 0
  ) STRICT;
  CREATE INDEX reps_golfer ON reps (golfer_id, at);
  CREATE TABLE readings (
    rep_id TEXT NOT NULL,
    place INTEGER NOT NULL,
    golfer_id TEXT NOT NULL,
    checkpoint TEXT NOT NULL,
    at REAL NOT NULL,
    sd_ms REAL NOT NULL,
    butt_y REAL,
    butt_sd REAL,
    head_y REAL,
    head_sd REAL,
    felt_y REAL,
    corrected_y REAL,
    left_out INTEGER NOT NULL DEFAULT 0,
    PRIMARY KEY (rep_id, place)
  ) STRICT;
  CREATE TABLE notes (id TEXT PRIMARY KEY, golfer_id TEXT NOT NULL, at REAL NOT NULL, by TEXT NOT NULL, text TEXT NOT NULL) STRICT;
  CREATE TABLE blocks (
    golfer_id TEXT NOT NULL,
    ladder TEXT NOT NULL,
    number INTEGER NOT NULL,
    at REAL NOT NULL,
    stage TEXT NOT NULL,
    passed INTEGER NOT NULL,
    checkpoint TEXT NOT NULL,
    median REAL NOT NULL,
    spread REAL NOT NULL,
    carry_over REAL,
    carry_over_sd REAL,
    exaggerate_by REAL NOT NULL,
    PRIMARY KEY (golfer_id, ladder, number, checkpoint)
  ) STRICT;
  CREATE TABLE cues (
    golfer_id TEXT NOT NULL,
    ladder TEXT NOT NULL,
    checkpoint TEXT NOT NULL,
    exaggerate_by REAL NOT NULL,
    set_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (golfer_id, ladder, checkpoint)
  ) STRICT;
  `,
];
