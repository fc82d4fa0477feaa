import { mkdir, open, readFile } from "node:fs/promises";
import { dirname } from "node:path";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { repSchema, type Rep } from "@overcue/shared-geometry/wire/rep";
import type { PracticeBook } from "../practice-book.ts";

/** A book of reps and nothing more: one JSON line a rep, on disk before `addRep` resolves. It knows no practice rules. */
export async function openRepJournal(path: string): Promise<PracticeBook> {
  await mkdir(dirname(path), { recursive: true });
  const reps = new Map((await readReps(path)).map((rep) => [rep.id, rep]));
  const file = await open(path, "a");
  const listeners = new Set<() => void>();
  let turn = Promise.resolve();
  let revision = 0;

  async function write(rep: Rep): Promise<void> {
    if (reps.has(rep.id)) return;
    await file.appendFile(`${JSON.stringify(rep)}\n`);
    await file.datasync();
    reps.set(rep.id, rep);
    revision += 1;
    for (const listener of listeners) listener();
  }

  return {
    addRep(rep) {
      const written = turn.then(() => write(rep));
      turn = written.catch(() => undefined);
      return written;
    },
    state: () => ({ ...emptyState, revision, repsInSession: reps.size, repsInStage: reps.size }),
    command: () => ({ ok: false, why: "This relay keeps reps but no practice yet." }),
    sessionView: () => ({ blocks: [], feltGaps: [], reps: [], retentionTests: [], notes: [] }),
    onChange(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: () => void turn.then(() => file.close()),
  };
}

/** The last line may be half written after a kill: it was never acknowledged, so it is left out. */
async function readReps(path: string): Promise<Rep[]> {
  const text = await readFile(path, "utf8").catch(() => "");
  return text.split("\n").flatMap((line) => {
    try {
      return [repSchema.parse(JSON.parse(line))];
    } catch {
      return [];
    }
  });
}

const emptyState: PracticeState = {
  revision: 0,
  golfer: { id: "golfer", name: "Golfer", handed: "right" },
  golfers: [{ id: "golfer", name: "Golfer", handed: "right" }],
  club: "6-iron",
  drill: {
    id: "free",
    name: "Free practice",
    summary: "",
    source: "",
    layOut: [],
    say: [],
    cautions: [],
    corridor: null,
  },
  drills: [{ id: "free", name: "Free practice", builtIn: true }],
  layout: { toeLine: 0.59, heelLine: 0.89, tolerance: 0.05 },
  stage: "slow-rehearsal",
  mode: "practice",
  aims: [],
  proposals: [],
  cueMode: "by-hand",
  cueLocked: false,
  rodOn: true,
  paused: false,
  muted: true,
  view: "live",
  feedback: "every-rep",
  repsInBlock: 0,
  blockSize: 5,
  repsInStage: 0,
  repsInSession: 0,
  nextRepAnswered: true,
  feltQuestion: false,
  feltAnswerWanted: null,
  feltAnswerCheckpoint: null,
  retentionOffer: null,
  verdict: null,
  pattern: { name: "not-enough-data", odds: 0 },
  advice: [],
  lastChange: null,
};
