import { describe, expect, it } from "vitest";
import { slowTempo, type DemoPlanItem } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { repReadings } from "@overcue/client-capture/pipeline/rep-readings";
import type { SwingSample } from "@overcue/client-capture/swing/swing-sample";
import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { judgeSession } from "../../accuracy/clock/judge-session.ts";
import { goOverSteps, stepSightings } from "../../accuracy/clock/replay-sightings.ts";
import { trueReps } from "../../accuracy/clock/true-reps.ts";
import { finishedOf, heldRep, motionOf, outOfSight, rep, runClock, still, timeOf } from "../../fakes/clock-run.ts";
import { noNoise } from "../../fakes/true-samples.ts";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

const everywhere = checkpointIds.filter((id) => id !== "address" && id !== "impact");

describe("a rep in which the club is held to look at the screen", () => {
  it.each(everywhere)("K3.6 K2.9 is whole after 30 s at %s, and dated as if it had not been held", (at) => {
    const motion = motionOf(heldRep(at, 30));
    const outputs = runClock(motion);
    expect(finishedOf(outputs).map(({ kind, missing }) => ({ kind, missing }))).toEqual([
      { kind: "rehearsal", missing: [] },
    ]);
    const lateAt = (id: CheckpointId): number => timeOf(finishedOf(outputs)[0], id) - timeOf(motion, id);
    expect(Math.abs(lateAt("address"))).toBeLessThan(700);
    expect(Math.abs(lateAt("impact"))).toBeLessThan(40);
  });

  it("K3.8 has no tempo, which the same rep has where it is not held", () => {
    const tempoOf = (item: DemoPlanItem): unknown => finishedOf(runClock(motionOf(item)))[0]?.tempo;
    expect(tempoOf(heldRep("arm-level-back", 3))).toBeNull();
    expect(tempoOf(heldRep("top", 3))).toBeNull();
    expect(tempoOf(rep("rehearsal", slowTempo))).toMatchObject({
      ratio: expect.closeTo(slowTempo.backswing / slowTempo.downswing, 1) as number,
    });
  });

  it("K3.6 is told when the club comes down after it was held at the top for 12 s, out of sight, with the hands seen up there", () => {
    const motion = motionOf(heldRep("top", 12));
    const from = timeOf(motion, "top");
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t < from || sample.t > from + 12_000 ? sample : outOfSight(sample);
    expect(finishedOf(runClock(motion, 60, noNoise, unseen)).map(({ kind }) => kind)).toEqual(["rehearsal"]);
    const handsUnseen = (sample: SwingSample): SwingSample => ({ ...unseen(sample), hands: null });
    expect(finishedOf(runClock(motion, 60, noNoise, handsUnseen))).toEqual([]);
  });

  it("K3.6 is none where the club was held up for 12 s, out of sight, and is next seen down at the ball", () => {
    const motion = motionOf(heldRep("top", 12));
    const at = (id: CheckpointId): number => timeOf(motion, id);
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t < at("top") || sample.t > at("shaft-level-down") ? sample : outOfSight(sample);
    const outputs = runClock(motion, 60, noNoise, unseen);
    expect(finishedOf(outputs)).toEqual([]);
    expect(outputs.flatMap(({ refused }) => refused ?? [])).toEqual([{ why: "club-lost", swungUp: true }]);
  });

  it("K3.7 is refused as too long where it was held for a minute, and who made it expects a rep", () => {
    const outputs = runClock(motionOf(heldRep("arm-level-back", 60)));
    expect(outputs.find(({ refused }) => refused !== null)?.refused).toEqual({ why: "too-long", swungUp: true });
  });

  describe("through pose and tracker as they err, 10 s wherever it may be held", () => {
    const session = practiceSession(9004);
    const items = [still(2), ...everywhere.flatMap((at) => [heldRep(at, 10), still(2)])];
    const plan = { ...session.scene.plan, items };
    const motion = demoMotion(plan);
    const scene = { ...session.scene, plan, framesPerSecond: 30, toMs: motion.duration * 1000 };
    const held = { ...session, motion, scene };
    const stepped = stepSightings(held, simulateSightings(held, usualSightErrors));
    const { configuration, outputs } = stepped;
    const reps = goOverSteps(stepped);

    it("K3.6 is found live and gone over, and nothing besides", () => {
      expect(finishedOf(outputs.map(({ swing }) => swing))).toHaveLength(everywhere.length);
      expect(reps).toHaveLength(everywhere.length);
    });

    it.each(["arm-level-back", "arm-level-down"] as const)("K4.2 is said to be held at %s, and nowhere else", (at) => {
      const hold = motion.reps[everywhere.indexOf(at)]?.hold;
      const [from, until] = [1000 * (hold?.from ?? Infinity) + 500, 1000 * (hold?.until ?? 0)];
      const there = outputs.filter(({ t }) => t > from && t < until);
      const said = there.flatMap(({ swing }) => (swing.phase === "hold" ? [swing.checkpoint] : []));
      expect(said.length / there.length).toBeGreaterThan(0.9);
      expect(new Set(said)).toEqual(new Set([at]));
    });

    it.each(["arm-level-back", "arm-level-down"] as const)(
      "K2.11 is read at %s, where it was held, to as many centimetres as it says and no more than ten",
      (at) => {
        const index = everywhere.indexOf(at);
        const rep = reps[index];
        if (rep === undefined) throw new Error(`no rep held at ${at}`);
        const truth = trueReps(motion)[index];
        const { checkpoints } = judgeSession(truth === undefined ? [] : [truth], [repReadings(rep, configuration)], {
          speed: "slow",
          framesPerSecond: 30,
        });
        const read = checkpoints.find(({ checkpoint }) => checkpoint === at);
        const off = read?.place?.off ?? { y: Infinity, sdY: Infinity };
        expect(read?.late).toBe(0);
        expect(off.sdY).toBeLessThan(0.1);
        expect(Math.abs(off.y) / off.sdY).toBeLessThan(2.5);
      },
    );
  });
});
