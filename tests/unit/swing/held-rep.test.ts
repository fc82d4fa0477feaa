import { describe, expect, it } from "vitest";
import { evenPlaces, slowTempo, type DemoPlanItem } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { SwingSample } from "@overcue/client-capture/swing/swing-sample";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { stepSightings } from "../../accuracy/clock/replay-sightings.ts";
import { finishedOf, motionOf, outOfSight, runClock, still } from "../../fakes/clock-run.ts";
import { noNoise } from "../../fakes/true-samples.ts";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

const heldAt = (at: CheckpointId, seconds: number): DemoPlanItem => ({
  ...{ do: "rep", kind: "rehearsal", places: evenPlaces, tempo: slowTempo },
  hold: { at, seconds },
});

const everywhere: readonly CheckpointId[] = [
  "takeaway",
  "shaft-level-back",
  "arm-level-back",
  "top",
  "arm-level-down",
  "shaft-level-down",
];

describe("a rep in which the club is held to look at the screen", () => {
  it.each(everywhere)("K3.6 K2.9 is whole after 30 s at %s, and dated as if it had not been held", (at) => {
    const motion = motionOf(heldAt(at, 30));
    const outputs = runClock(motion);
    expect(finishedOf(outputs).map(({ kind, missing }) => ({ kind, missing }))).toEqual([
      { kind: "rehearsal", missing: [] },
    ]);
    const told = finishedOf(outputs)[0]?.checkpoints ?? [];
    const lateAt = (id: string): number => {
      const really = motion.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? Number.NaN;
      return (told.find(({ checkpoint }) => checkpoint === id)?.t ?? Number.NaN) - really;
    };
    expect(Math.abs(lateAt("address"))).toBeLessThan(700);
    expect(Math.abs(lateAt("impact"))).toBeLessThan(40);
  });

  it("K3.6 is told when the club comes down after it was held at the top for 12 s, out of sight, with the hands seen up there", () => {
    const motion = motionOf(heldAt("top", 12));
    const from = motion.checkpoints.find(({ checkpoint }) => checkpoint === "top")?.t ?? Number.NaN;
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t < from || sample.t > from + 12_000 ? sample : outOfSight(sample);
    expect(finishedOf(runClock(motion, 60, noNoise, unseen)).map(({ kind }) => kind)).toEqual(["rehearsal"]);
    const handsUnseen = (sample: SwingSample): SwingSample => ({ ...unseen(sample), hands: null });
    expect(finishedOf(runClock(motion, 60, noNoise, handsUnseen))).toEqual([]);
  });

  it("K3.6 is none where the club was held up for 12 s, out of sight, and is next seen down at the ball", () => {
    const motion = motionOf(heldAt("top", 12));
    const at = (id: string): number => motion.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? Number.NaN;
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t < at("top") || sample.t > at("shaft-level-down") ? sample : outOfSight(sample);
    const outputs = runClock(motion, 60, noNoise, unseen);
    expect(finishedOf(outputs)).toEqual([]);
    expect(outputs.flatMap(({ refused }) => refused ?? [])).toEqual(["club-lost"]);
  });

  it("K3.6 K4.2 is found wherever it is held for 10 s, through pose and tracker as they err, and one held on its way back is not said to be on its way down", () => {
    const session = practiceSession(9004);
    const items = [still(2), ...everywhere.flatMap((at) => [heldAt(at, 10), still(2)])];
    const plan = { ...session.scene.plan, items };
    const motion = demoMotion(plan);
    const scene = { ...session.scene, plan, framesPerSecond: 30, toMs: motion.duration * 1000 };
    const held = { ...session, motion, scene };
    const { outputs } = stepSightings(held, simulateSightings(held, usualSightErrors));
    const told = outputs.flatMap(({ swing }) => (swing.finished === null ? [] : [swing.finished]));
    expect(told).toHaveLength(everywhere.length);
    const hold = motion.reps[everywhere.indexOf("arm-level-back")]?.hold;
    const there = outputs.filter(({ t }) => t > 1000 * (hold?.from ?? Infinity) + 500 && t < 1000 * (hold?.until ?? 0));
    const said = there.flatMap(({ swing }) => (swing.phase === "hold" ? [swing.checkpoint] : []));
    expect(said.length / there.length).toBeGreaterThan(0.9);
    expect(new Set(said)).toEqual(new Set(["arm-level-back"]));
  });
});
