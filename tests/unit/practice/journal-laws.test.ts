import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { takeawayAlone } from "@overcue/server/practice/drill/built-in/takeaway-alone";
import type { JournalEntry, PracticeEvent } from "@overcue/server/practice/journal/events";
import { advance, replay } from "@overcue/server/practice/journal/replay";
import { emptyPractice, type Practice } from "@overcue/server/practice/journal/state";
import { anyJournal } from "./arbitrary-journal.ts";
import { baselineReps, journalOf, repId, repRecord, someone } from "./entries.ts";

const runs = { numRuns: 150 };

/** Entry by entry, as the running relay does it. */
function oneByOne(journal: readonly JournalEntry[]): Practice {
  return journal.reduce((practice, _, index) => advance(practice, journal.slice(0, index + 1)), emptyPractice);
}

const next = (journal: readonly JournalEntry[], ...events: readonly PracticeEvent[]): readonly JournalEntry[] => [
  ...journal,
  ...events.map((event, index) => ({
    sequence: journal.length + 1 + index,
    at: (journal.at(-1)?.at ?? 0) + 20_000 * (index + 1),
    by: "test",
    golferId: "g",
    event,
  })),
];

/** Places that are exact in binary, so that doubling them loses nothing. */
const eighths = fc.integer({ min: -800, max: 800 }).map((whole) => whole / 1024);

const odd = repRecord(999, { "arm-level-back": { y: 0.4321987654321, sd: 0.0123987654321 } });

describe("the journal", () => {
  it("P23 replays to the same practice, one by one or all at once", () => {
    fc.assert(
      fc.property(anyJournal, (journal) => {
        expect(oneByOne(journal)).toEqual(replay(journal));
        expect(replay(journal)).toEqual(replay(JSON.parse(JSON.stringify(journal)) as typeof journal));
      }),
      runs,
    );
  });

  it("P24 a rep that is voided at once leaves the practice exactly as it was", () => {
    fc.assert(
      fc.property(anyJournal, (journal) => {
        const after = next(journal, { type: "rep-recorded", rep: odd }, { type: "rep-voided", repId: odd.id });
        expect(oneByOne(after)).toEqual(replay(journal));
      }),
      runs,
    );
  });

  it("P24 a rep that is voided later is as if it had never been made, and none of its numbers is left", () => {
    fc.assert(
      fc.property(anyJournal, fc.nat(), (journal, where) => {
        const at = 4 + (where % (journal.length - 3));
        const made: JournalEntry = {
          sequence: 1,
          at: 0,
          by: "test",
          golferId: "g",
          event: { type: "rep-recorded", rep: odd },
        };
        const withRep = [...journal.slice(0, at), made, ...journal.slice(at)];
        const voided = next(
          withRep,
          { type: "rep-starred", repId: odd.id, starred: true },
          { type: "rep-voided", repId: odd.id },
        );
        const practice = replay(voided);
        expect(practice).toEqual(replay(journal));
        expect(JSON.stringify(practice)).not.toMatch(/4321987654321|0123987654321|000000000999/);
      }),
      runs,
    );
  });

  it("P24 a rep restored is as if it had never been void; a corrected reading as if it had been read so", () => {
    const practising = [...someone, ...baselineReps(7), { type: "rep-recorded", rep: odd } as const];
    const restored = next(
      journalOf(practising),
      { type: "rep-voided", repId: odd.id },
      { type: "rep-restored", repId: odd.id },
    );
    expect(replay(restored)).toEqual(replay(journalOf(practising)));

    const right = repRecord(999, { "arm-level-back": { y: 0.1, sd: 0.0123987654321 } });
    const corrected = next(journalOf(practising), {
      type: "reading-corrected",
      repId: odd.id,
      checkpoint: "arm-level-back",
      y: 0.1,
    });
    const readSo = journalOf([...someone, ...baselineReps(7), { type: "rep-recorded", rep: right }]);
    expect(replay(corrected)).toEqual(replay(readSo));
    expect(replay(corrected)).not.toEqual(replay(journalOf(practising)));
  });

  it("P25 golfers never mix: without one golfer's entries the other's book is the same", () => {
    fc.assert(
      fc.property(anyJournal, (journal) => {
        const alone = journal.filter(
          ({ golferId, event }) => golferId === "g" || event.type === "paused-set" || event.type === "drill-saved",
        );
        const named = new Set(alone.flatMap(({ event }) => (event.type === "rep-recorded" ? [event.rep.id] : [])));
        // Random voids and corrections may name the other golfer's reps; the relay never writes such an entry.
        const own = (entry: JournalEntry): boolean => !("repId" in entry.event) || named.has(entry.event.repId);
        const both = journal.filter((entry) => (entry.golferId === "h" ? !("repId" in entry.event) : own(entry)));
        expect(
          replay(alone.filter((entry) => (entry.golferId === "h" ? !("repId" in entry.event) : own(entry)))).golfers[
            "g"
          ],
        ).toEqual(replay(both).golfers["g"]);
      }),
      runs,
    );
  });

  it("P25 another club is another baseline and another ladder", () => {
    const sevenIron = replay(journalOf([...someone, ...baselineReps(7)]));
    const station = { club: "6-iron" as const, toeLine: 0.59, heelLine: 0.89, tolerance: 0.05 };
    const sixIron = replay(journalOf([...someone, ...baselineReps(7), { type: "station-set", station }]));
    expect(sevenIron.golfers["g"]?.mode).toBe("practice");
    expect(sixIron.golfers["g"]?.mode).toBe("baseline");
    expect(sixIron.golfers["g"]?.baselines["6-iron"]).toBeUndefined();
  });

  it("P8 with every length doubled, every share and stage stays and every length doubles", () => {
    fc.assert(
      fc.property(fc.array(eighths, { minLength: 8, maxLength: 40 }), (ys) => {
        const plain = lengthsOf(replay(courseAt(ys, 1)));
        const doubled = lengthsOf(replay(courseAt(ys, 2)));
        expect(doubled.shares).toEqual(plain.shares);
        expect(doubled.lengths).toEqual(plain.lengths.map((length) => 2 * length));
        expect(plain.shares.length).toBeGreaterThan(0);
      }),
      runs,
    );
  });
});

/** A practice with the takeaway drill (all of whose stretches are bands), every length multiplied. */
function courseAt(ys: readonly number[], scale: number): readonly JournalEntry[] {
  const station = { club: "7-iron" as const, toeLine: 0.5 * scale, heelLine: 0.75 * scale, tolerance: 0.0625 * scale };
  return journalOf([
    ...someone,
    { type: "station-set", station },
    { type: "drill-chosen", drillId: takeawayAlone.id },
    ...ys.map((y, index): PracticeEvent => {
      const reading = { y: y * scale, sd: 0.03125 * scale };
      const rep = repRecord(index + 1, { takeaway: reading, "shaft-level-back": reading });
      return { type: "rep-recorded", rep: { ...rep, shown: [{ checkpoint: "takeaway", felt: -0.25 * scale }] } };
    }),
  ]);
}

function lengthsOf(practice: Practice): { readonly shares: readonly unknown[]; readonly lengths: readonly number[] } {
  const ladders = Object.values(practice.golfers["g"]?.ladders ?? {});
  const places = ladders.flatMap(({ blocks }) => blocks.flatMap((block) => block.places));
  const cues = ladders.flatMap(({ cues: all }) => Object.values(all));
  return {
    shares: [
      ...ladders.map(({ stage, arrives, rodBack }) => ({ stage, arrives, rodBack })),
      ...places.map(({ carryOver }) => carryOver),
    ],
    lengths: [
      ...places.flatMap(({ summary, exaggerateBy }) => [summary.median, summary.spread, summary.sd, exaggerateBy]),
      ...cues.map(({ exaggerateBy }) => exaggerateBy),
    ],
  };
}

describe("P9 what counts", () => {
  const counted = (change: Parameters<typeof repRecord>[2], ...before: readonly PracticeEvent[]) => {
    const rep = repRecord(50, { "arm-level-back": { y: 0, sd: 0.02 } }, change);
    const practice = replay(journalOf([...someone, ...baselineReps(7), ...before, { type: "rep-recorded", rep }]));
    const book = practice.golfers["g"];
    return {
      leftOut: book?.session?.reps.at(-1)?.leftOut,
      inBlock: book?.ladders["7-iron high-road-low-road"]?.block.length ?? 0,
    };
  };

  it.each([
    ["a calibrated rep", {}, [], null, 1],
    ["the demo's camera", { calibration: "demo" }, [], null, 1],
    ["an uncalibrated camera", { calibration: "uncalibrated" }, [], "camera not calibrated", 0],
    ["a camera that was moved", { calibration: "suspect" }, [], "camera or sticks moved", 0],
    ["another hand", { handed: "left" }, [], "read for a left-handed golfer", 0],
    ["while paused", {}, [{ type: "paused-set", paused: true }], "made while paused", 0],
    ["nothing read", { checkpoints: [] }, [], "nothing could be read at this drill's checkpoints", 0],
  ] as const)("P9 %s", (_, change, before, leftOut, inBlock) => {
    expect(counted(change as Parameters<typeof repRecord>[2], ...before)).toEqual({ leftOut, inBlock });
    expect(repId(50)).toContain("50");
  });
});
