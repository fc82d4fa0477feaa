import { describe, expect, it } from "vitest";
import { evenPlaces, slowTempo, usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import {
  endSwingClock,
  runSwingClock,
  startSwingClock,
  type SwingClockOutput,
} from "@overcue/client-capture/swing/swing-clock";
import { type SwingSample } from "@overcue/client-capture/swing/swing-sample";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { seconds } from "@overcue/shared-geometry/units";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { finishedOf, heldRep, motionOf, outOfSight, rep, runClock, still, timeOf } from "../../fakes/clock-run.ts";
import { noNoise, trueSamples } from "../../fakes/true-samples.ts";
import { seededRandom } from "../../scenes/random.ts";

describe("a club that is out of sight for part of a rep", () => {
  it("K3.4 a rep whose way down was not seen lacks those checkpoints, or is no rep; it never makes them up", () => {
    const motion = motionOf(rep("full", slowTempo));
    const hidden = timeOf(motion, "shaft-level-back");
    let state = startSwingClock(gripToHead(usualGolfer.station));
    const outputs: SwingClockOutput[] = [];
    for (const sample of trueSamples(motion, 60, noNoise, seededRandom(1))) {
      const gone = Math.abs(sample.t - hidden) < 300;
      const ran = runSwingClock(state, gone ? outOfSight(sample) : sample);
      state = ran.state;
      outputs.push(ran.output);
    }
    const [finished] = finishedOf(outputs);
    const level = finished?.checkpoints.find((one) => one.checkpoint === "shaft-level-back");
    expect(finished).toBeDefined();
    expect(level?.shaft ?? null).toBeNull();
  });

  it("K2.7 where the club is out of sight about the top, the shortest way between where it went and where it came back does not tell it", () => {
    const motion = motionOf(rep("full", slowTempo));
    const truth = timeOf(motion, "top");
    const [from, to] = [truth - 500, truth + 200];
    const wayAt = (t: number) => motion.at(t / 1000).club?.toHead ?? { x: 0, y: 0, z: 1 };
    const guessed = (sample: SwingSample): SwingSample => {
      if (sample.shaft === null || sample.t < from || sample.t > to) return sample;
      const share = (sample.t - from) / (to - from);
      const mixed = (axis: "x" | "y" | "z"): number => (1 - share) * wayAt(from)[axis] + share * wayAt(to)[axis];
      const length = Math.hypot(mixed("x"), mixed("y"), mixed("z"));
      const toHead = { x: mixed("x") / length, y: mixed("y") / length, z: mixed("z") / length };
      return { ...sample, tracked: false, shaft: { ...sample.shaft, toHead } };
    };
    const [finished] = finishedOf(runClock(motion, 60, noNoise, guessed));
    const top = finished?.checkpoints.find(({ checkpoint }) => checkpoint === "top");
    expect(Math.abs((top?.t ?? 0) - truth)).toBeLessThan(40);
  });

  it("K3.5 a club out of sight, and supposed to turn on past the top and hang there, has not come down while the hands are high", () => {
    const motion = motionOf(rep("rehearsal", slowTempo));
    const top = timeOf(motion, "top");
    const unseen = (sample: SwingSample): SwingSample => {
      const after = sample.t - top;
      if (sample.shaft === null || after < 0 || after > 900) return sample;
      const droops = ((10 + Math.max(0, after - 540) / 4) * Math.PI) / 180;
      const toHead = { x: Math.cos(droops), y: 0, z: -Math.sin(droops) };
      return { ...sample, tracked: false, shaft: { ...sample.shaft, toHead }, alone: null };
    };
    const finished = finishedOf(runClock(motion, 60, noNoise, unseen));
    expect(finished.map(({ kind }) => kind)).toEqual(["rehearsal"]);
    expect(finished[0]?.missing).toEqual([]);
  });

  it("K3.6 a club that is held at the top, pointing away from the camera and unseen for three and a half seconds, loses no rep", () => {
    const motion = motionOf(heldRep("top", 3.4));
    const from = timeOf(motion, "top");
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t < from || sample.t > from + 3500 ? sample : outOfSight(sample);
    expect(finishedOf(runClock(motion, 60, noNoise, unseen)).map(({ kind }) => kind)).toEqual(["rehearsal"]);
  });

  it("K3.1 a club last seen past the ball, and next seen behind it on its way back, hung low in between", () => {
    const motion = motionOf({ do: "rep", kind: "continuous", places: evenPlaces, tempo: slowTempo, swings: 3 });
    const timesOf = (id: string) => motion.checkpoints.filter(({ checkpoint }) => checkpoint === id).map(({ t }) => t);
    const impacts = timesOf("impact");
    const level = timesOf("shaft-level-back");
    expect(impacts).toHaveLength(3);
    const unseen = (sample: SwingSample): SwingSample =>
      impacts.some((impact, at) => sample.t > impact + 350 && sample.t < (level[at + 1] ?? Infinity) + 60)
        ? outOfSight(sample)
        : sample;
    expect(finishedOf(runClock(motion, 60, noNoise, unseen))).toHaveLength(3);
  });

  it("K3.1 a rep whose club goes out of sight in the follow-through is told when that has had its time", () => {
    const motion = motionOf(rep("full"), still(4));
    const impact = timeOf(motion, "impact");
    const unseen = (sample: SwingSample): SwingSample => (sample.t > impact + 200 ? outOfSight(sample) : sample);
    const [told, ...others] = runClock(motion, 60, noNoise, unseen).filter(({ finished }) => finished !== null);
    expect(others).toEqual([]);
    expect(told?.t).toBeLessThan(impact + 1600);
    expect(told?.finished?.missing).toEqual([]);
  });

  it("K3.1 a club that was held on its way down, and goes out of sight after the ball, is waited for as if it had not been held", () => {
    const motion = motionOf(heldRep("arm-level-down", 8), still(6), rep("rehearsal", slowTempo));
    const impact = timeOf(motion, "impact");
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t > impact + 300 && sample.t < impact + 6000 ? outOfSight(sample) : sample;
    const told = runClock(motion, 60, noNoise, unseen).filter(({ finished }) => finished !== null);
    expect(told.map(({ finished }) => finished?.kind)).toEqual(["rehearsal", "rehearsal"]);
    expect(told[0]?.t).toBeLessThan(impact + 2000);
  });

  it("K3.1 samples that end with the club seen past the ball have its rep, however long it was out of sight about the top", () => {
    const motion = motionOf(heldRep("top", 3));
    const at = (id: CheckpointId): number => timeOf(motion, id);
    let state = startSwingClock(gripToHead(usualGolfer.station));
    for (const sample of trueSamples(motion, 60, noNoise, seededRandom(1))) {
      if (sample.t > at("impact") + 500) break;
      const isUnseen = sample.t > at("top") - 100 && sample.t < at("top") + 3600;
      const ran = runSwingClock(state, isUnseen ? outOfSight(sample) : sample);
      expect(ran.output.finished).toBeNull();
      state = ran.state;
    }
    const rep = endSwingClock(state);
    expect(rep?.kind).toBe("rehearsal");
    expect(Math.abs(timeOf(rep, "impact") - at("impact"))).toBeLessThan(60);
  });

  it("K3.4 a fast club that is out of sight from its way down until after the ball makes a rep without impact and tempo; out of sight for longer, none", () => {
    const motion = motionOf(rep("full"), still(2));
    const at = (id: CheckpointId): number => timeOf(motion, id);
    const unseenFrom = (from: number) =>
      finishedOf(
        runClock(motion, 60, noNoise, (sample) =>
          sample.t > from && sample.t < at("impact") + 120 ? outOfSight(sample) : sample,
        ),
      );
    const [told, ...others] = unseenFrom(at("top") + 60);
    expect(others).toEqual([]);
    expect(told?.kind).toBe("full");
    expect(told?.missing).toEqual(["shaft-level-down", "impact"]);
    expect(told?.tempo).toBeNull();
    expect(unseenFrom(at("shaft-level-back"))).toEqual([]);
  });

  it("K3.4 makes one too where the club was not seen level going back either, if it set off from a rest at the ball; out of a flow, none", () => {
    const reps = (kind: "full" | "flow") => {
      const motion = motionOf(rep(kind, { backswing: seconds(1.4), downswing: seconds(0.25) }), still(2));
      const at = (id: CheckpointId): number => timeOf(motion, id);
      const level = at("shaft-level-back");
      const unseen = (sample: SwingSample): SwingSample => {
        const goingBack = sample.t > level - 600 && sample.t < level + 20;
        const comingDown = sample.t > at("top") + 60 && sample.t < at("impact") + 150;
        return goingBack || comingDown ? outOfSight(sample) : sample;
      };
      return finishedOf(runClock(motion, 60, noNoise, unseen));
    };
    const [told, ...others] = reps("full");
    expect(others).toEqual([]);
    expect(told?.missing).toEqual(["shaft-level-back", "shaft-level-down", "impact"]);
    expect(reps("flow")).toEqual([]);
  });
});
