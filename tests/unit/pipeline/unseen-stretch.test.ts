import { describe, expect, it } from "vitest";
import { placesOf, slowTempo, type DemoRepPlan } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { ReadCheckpoint } from "@overcue/client-capture/pipeline/rep-readings";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { milliseconds } from "@overcue/shared-geometry/units";
import { replaySightings } from "../../accuracy/clock/replay-sightings.ts";
import { trueReps, type TrueCheckpoint } from "../../accuracy/clock/true-reps.ts";
import { between, namedRandom } from "../../scenes/random.ts";
import { practiceSession, type SessionForm } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings, type Sighting } from "../../scenes/session/simulate-sightings.ts";

const rehearsal: DemoRepPlan = { do: "rep", kind: "rehearsal", places: placesOf(1), tempo: slowTempo };

type Level = "arm-level" | "shaft-level";

/** Flat going back and steep coming down, held at the levels, so that what is read at one of them is plainly not what there was at the other. */
const heldRehearsals = (level: Level): SessionForm => ({
  framesPerSecond: () => 20,
  unhurried: false,
  reps(_, random) {
    const held = (at: CheckpointId): DemoRepPlan => ({ ...rehearsal, hold: { at, seconds: between(random, 1, 2) } });
    const last = level === "arm-level" ? "top" : "takeaway";
    return [held(`${level}-back`), rehearsal, held(`${level}-down`), held(last), held(`${level}-back`)];
  },
});

const missing = {
  pictures: (sightings: Sighting[], isUnseen: (t: number) => boolean) => sightings.filter(({ t }) => !isUnseen(t)),
  shaft: (sightings: Sighting[], isUnseen: (t: number) => boolean) =>
    sightings.map((one): Sighting =>
      isUnseen(one.t) ? { ...one, shaft: { status: "lost", t: milliseconds(one.t), reason: "no-line-found" } } : one,
    ),
};

/** What was read at the levels of all reps, each beside the truth, with the way from somewhere about the first to somewhere about the second unseen. */
function readUnseen(
  index: number,
  level: Level,
  what: keyof typeof missing,
): { read: ReadCheckpoint; truth: TrueCheckpoint }[] {
  const session = practiceSession(index, heldRehearsals(level));
  const truths = trueReps(session.motion);
  const random = namedRandom(index, `unseen ${what}`);
  const gaps = truths.flatMap(({ checkpoints }) => {
    const [back, down] = [`${level}-back`, `${level}-down`].map((id) =>
      checkpoints.find(({ checkpoint }) => checkpoint === id),
    );
    const ends = [between(random, -500, 500), between(random, -600, 500)] as const;
    return back && down ? [{ from: back.until + ends[0], to: down.t + ends[1] }] : [];
  });
  const isUnseen = (t: number): boolean => gaps.some(({ from, to }) => t > from && t < to);
  const sightings = missing[what](Array.from(simulateSightings(session, usualSightErrors)), isUnseen);
  return replaySightings(session, sightings).reps.flatMap(({ checkpoints, startedAt, endedAt }) => {
    const rep = truths.find(({ from, to }) => startedAt < to && endedAt > from);
    return checkpoints.flatMap((read) => {
      const truth = rep?.checkpoints.find(({ checkpoint }) => checkpoint === read.checkpoint);
      return read.checkpoint.startsWith(level) && truth ? [{ read, truth }] : [];
    });
  });
}

describe("a rep of which a long stretch was not seen", () => {
  // Among these are sessions in which both had been claimed.
  it.each([
    { level: "arm-level", what: "pictures", sessions: [9001, 9004, 9114, 9212, 9225] },
    { level: "arm-level", what: "shaft", sessions: [9001, 9004, 9114, 9212, 9225] },
    { level: "shaft-level", what: "pictures", sessions: [9308, 9310, 9312] },
  ] as const)(
    "K2.5 K3.4 F7 claims no place at one $level that was the other's, nor one that the picture speaks against: no $what there",
    ({ level, what, sessions }) => {
      const all = sessions.flatMap((index) => readUnseen(index, level, what));
      const places = all.flatMap(({ read, truth }) => {
        const [told, really] = [read, truth].map(({ readOuts }) =>
          level === "arm-level" ? readOuts.buttPoint : readOuts.headPoint,
        );
        return told?.defined && really?.defined ? [{ checkpoint: read.checkpoint, told, really }] : [];
      });
      expect(places.length).toBeGreaterThan(2 * sessions.length);
      for (const { checkpoint, told, really } of places) {
        const inSds = Math.abs(told.y - really.y) / told.sdY;
        expect(inSds, `${checkpoint} read at ${told.y}, really ${really.y}`).toBeLessThan(4);
      }
    },
  );
});
