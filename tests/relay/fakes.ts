import { randomBytes } from "node:crypto";
import type { PracticeState, SessionView } from "@overcue/shared-geometry/wire/practice";
import type { Rep } from "@overcue/shared-geometry/wire/rep";
import type { Effects } from "@overcue/server/effects";
import type { PracticeBook } from "@overcue/server/practice-book";

/** A clock and a network that a test turns by hand. */
export interface FakeEffects extends Effects {
  time: number;
  date: Date;
  network: string[];
}

export function fakeEffects(): FakeEffects {
  const fake: FakeEffects = {
    time: 1_000_000,
    date: new Date("2026-03-01T12:00:00Z"),
    network: ["192.168.7.20"],
    relayTime: () => fake.time,
    today: () => fake.date,
    randomBytes: (length) => randomBytes(length),
    addresses: () => fake.network,
    hostName: () => "range-laptop",
  };
  return fake;
}

/** A book in memory whose disk a test holds: `addRep` resolves when `writeOut` is called, or at once. */
export interface FakeBook extends PracticeBook {
  readonly reps: Map<string, Rep>;
  readonly commands: { readonly command: unknown; readonly by: string }[];
  /** Each time that the phone began (true) or ended to show the demo golfer. */
  readonly demos: boolean[];
  /** False: reps wait until `writeOut`. */
  writesAtOnce: boolean;
  failsWith: string | null;
  /** True: the practice cannot be shown. */
  stateFails: boolean;
  writeOut(): void;
}

export function fakeBook(): FakeBook {
  const listeners = new Set<() => void>();
  const waiting: (() => void)[] = [];
  let revision = 0;
  const changed = (): void => {
    revision += 1;
    for (const listener of listeners) listener();
  };
  const book: FakeBook = {
    reps: new Map(),
    commands: [],
    demos: [],
    writesAtOnce: true,
    failsWith: null,
    stateFails: false,
    writeOut() {
      for (const write of waiting.splice(0)) write();
    },
    async addRep(rep) {
      if (book.failsWith !== null) throw new Error(book.failsWith);
      if (!book.writesAtOnce) await new Promise<void>((resolve) => waiting.push(resolve));
      if (book.reps.has(rep.id)) return;
      book.reps.set(rep.id, rep);
      changed();
    },
    state() {
      if (book.stateFails) throw new Error("the practice cannot be shown");
      return { ...practiceState, revision, repsInSession: book.reps.size };
    },
    showDemo(shown) {
      book.demos.push(shown);
    },
    command(command, by) {
      book.commands.push({ command, by });
      if (command.do === "accept-proposal") return { ok: false, why: "There is no proposal." };
      changed();
      return { ok: true };
    },
    sessionView: () => sessionView,
    onChange(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: () => undefined,
  };
  return book;
}

const sessionView: SessionView = { blocks: [], feltGaps: [], reps: [], retentionTests: [], notes: [] };

const practiceState: PracticeState = {
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
