import { describe, expect, it } from "vitest";
import { placesOf, slowTempo, type DemoRepPlan } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { ReadCheckpoint } from "@overcue/client-capture/pipeline/rep-readings";
import { milliseconds } from "@overcue/shared-geometry/units";
import { replaySightings } from "../../accuracy/clock/replay-sightings.ts";
import { trueReps, type TrueCheckpoint } from "../../accuracy/clock/true-reps.ts";
import { between, namedRandom } from "../../scenes/random.ts";
import { practiceSession, type SessionForm } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings, type Sighting } from "../../scenes/session/simulate-sightings.ts";

const rehearsal: DemoRepPlan = { do: "rep", kind: "rehearsal", places: placesOf(1), tempo: slowTempo };
const held = (at: NonNullable<DemoRepPlan["hold"]>["at"], seconds: number): DemoRepPlan => ({
  ...rehearsal,
  hold: { at, seconds },
});

/** Flat going back and steep coming down, so that what is read at one arm level is plainly not what there was at the other. */
const heldRehearsals: SessionForm = {
  framesPerSecond: () => 20,
  unhurried: false,
  reps: (_, random) => [
    held("arm-level-back", between(random, 1, 2)),
    rehearsal,
    held("arm-level-down", between(random, 1, 2)),
    held("top", between(random, 1, 2)),
    held("arm-level-back", between(random, 1, 2)),
  ],
};

const missing = {
  pictures: (sightings: Sighting[], isUnseen: (t: number) => boolean) => sightings.filter(({ t }) => !isUnseen(t)),
  shaft: (sightings: Sighting[], isUnseen: (t: number) => boolean) =>
    sightings.map((one): Sighting =>
      isUnseen(one.t) ? { ...one, shaft: { status: "lost", t: milliseconds(one.t), reason: "no-line-found" } } : one,
    ),
};

/** What was read at the arm levels of all reps, each beside the truth, with the way from somewhere about the first to somewhere about the second unseen. */
function readUnseen(index: number, what: keyof typeof missing): { read: ReadCheckpoint; truth: TrueCheckpoint }[] {
  const session = practiceSession(index, heldRehearsals);
  const truths = trueReps(session.motion);
  const random = namedRandom(index, `unseen ${what}`);
  const gaps = truths.flatMap(({ checkpoints }) => {
    const [back, down] = (["arm-level-back", "arm-level-down"] as const).map((id) =>
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
      return read.checkpoint.startsWith("arm-level") && truth ? [{ read, truth }] : [];
    });
  });
}

describe("a rep of which a long stretch was not seen", () => {
  it.each(["pictures", "shaft"] as const)(
    "K2.5 K3.4 F7 claims no place at one arm level that was the other's, nor one that the picture speaks against: no %s there",
    (what) => {
      // Among these are sessions in which both had been claimed.
      const all = [9001, 9004, 9114, 9212, 9225].flatMap((index) => readUnseen(index, what));
      const places = all.flatMap(({ read, truth }) => {
        const [told, really] = [read.readOuts.buttPoint, truth.readOuts.buttPoint];
        return told.defined && really.defined ? [{ checkpoint: read.checkpoint, told, really }] : [];
      });
      expect(places.length).toBeGreaterThan(12);
      for (const { checkpoint, told, really } of places) {
        expect(
          Math.abs(told.y - really.y) / told.sdY,
          `${checkpoint} read at ${told.y}, really ${really.y}`,
        ).toBeLessThan(4);
      }
    },
  );
});
