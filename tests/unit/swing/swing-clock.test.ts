import { describe, expect, it } from "vitest";
import {
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoDistraction,
  type DemoRepKind,
  type DemoTempo,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { type FinishedRep } from "@overcue/client-capture/swing/finish-rep";
import { endSwingClock, runSwingClock, startSwingClock } from "@overcue/client-capture/swing/swing-clock";
import { type SwingSample } from "@overcue/client-capture/swing/swing-sample";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { seconds } from "@overcue/shared-geometry/units";
import { finishedOf, motionOf, rep, runClock, still, timeOf } from "../../fakes/clock-run.ts";
import { noNoise, trueSamples } from "../../fakes/true-samples.ts";
import { seededRandom } from "../../scenes/random.ts";

/** Every other `period` milliseconds the shaft leans the other way along the target line. */
const wrongLean =
  (period: number) =>
  (sample: SwingSample): SwingSample => {
    if (sample.shaft === null || Math.floor(sample.t / period) % 2 === 0) return sample;
    const { toHead } = sample.shaft;
    return { ...sample, shaft: { ...sample.shaft, toHead: { ...toHead, x: -toHead.x } } };
  };

describe("reps", () => {
  it.each<[DemoRepKind, DemoTempo, string]>([
    ["full", tourTempo, "full"],
    ["half", tourTempo, "half"],
    ["pump", tourTempo, "pump"],
    ["flow", tourTempo, "flow"],
    ["rehearsal", slowTempo, "rehearsal"],
    ["pump", slowTempo, "pump"],
  ])("K3.3 a %s is told once and named", (kind, tempo, name) => {
    const finished = finishedOf(runClock(motionOf(rep(kind, tempo))));
    expect(finished.map((one) => one.kind)).toEqual([name]);
    expect(finished[0]?.missing).toEqual([]);
  });

  it("K3.3 a club that is misjudged for a tenth of a second on its way makes no pump", () => {
    const motion = motionOf(rep("full", slowTempo));
    const top = timeOf(motion, "top");
    const misjudged = (sample: SwingSample): SwingSample => {
      if (sample.shaft === null || sample.t < top - 300 || sample.t > top - 200) return sample;
      const { grip } = sample.shaft;
      return { ...sample, shaft: { ...sample.shaft, grip: { ...grip, z: grip.z - 0.7 } } };
    };
    const [finished, more] = finishedOf(runClock(motion, 60, noNoise, misjudged));
    expect(finished?.kind).toBe("rehearsal");
    expect(more).toBeUndefined();
    const told = timeOf(finished, "top");
    expect(Math.abs(told - top)).toBeLessThan(100);
  });

  it("K3.1 every swing of a continuous run is a rep", () => {
    expect(finishedOf(runClock(motionOf(rep("continuous")))).length).toBe(2);
  });

  it.each<DemoDistraction>([
    "waggle",
    "practice-brush",
    "tee-up",
    "walk-away-and-back",
    "re-grip",
    "lean-on-club",
    "look-up",
  ])("K3.2 K3.7 %s is no rep, and nobody expects one", (what) => {
    const outputs = runClock(motionOf({ do: "distraction", what }, still(1), rep("full")));
    const finished = finishedOf(outputs);
    expect(finished.length).toBe(1);
    expect(finished[0]?.kind).toBe("full");
    expect(outputs.filter(({ refused }) => refused?.swungUp === true)).toEqual([]);
  });

  it.each<[DemoRepKind, DemoTempo]>([
    ["full", tourTempo],
    ["half", tourTempo],
    ["rehearsal", slowTempo],
    ["flow", tourTempo],
  ])("K1.3 a lean the wrong way round loses no %s and moves no shaft level", (kind, tempo) => {
    const motion = motionOf(rep(kind, tempo));
    const right = finishedOf(runClock(motion));
    for (const period of [70, 260, 900]) {
      const wrong = finishedOf(runClock(motion, 60, noNoise, wrongLean(period)));
      expect(wrong.map((one) => one.kind)).toEqual(right.map((one) => one.kind));
      for (const checkpoint of ["shaft-level-back", "shaft-level-down"] as const) {
        const at = (finished: typeof right): number =>
          finished[0]?.checkpoints.find((one) => one.checkpoint === checkpoint)?.t ?? Number.NaN;
        expect(Math.abs(at(wrong) - at(right)), `${checkpoint}, every ${period} ms`).toBeLessThan(0.5);
      }
    }
  });

  it("K2.1 dates shaft level, arm level and impact within 4 ms at 60 pictures a second when its input is right", () => {
    const motion = motionOf(rep("full"));
    const [finished] = finishedOf(runClock(motion));
    for (const checkpoint of [
      "shaft-level-back",
      "arm-level-back",
      "arm-level-down",
      "shaft-level-down",
      "impact",
    ] as const) {
      const truth = motion.checkpoints.find((one) => one.checkpoint === checkpoint);
      const dated = finished?.checkpoints.find((one) => one.checkpoint === checkpoint);
      expect(truth, checkpoint).toBeDefined();
      expect(Math.abs((dated?.t ?? Infinity) - (truth?.t ?? 0)), checkpoint).toBeLessThan(4);
    }
  });

  it("K2.2 states the error of each instant: nine in ten lie within two standard errors under noise", () => {
    let inside = 0;
    let all = 0;
    const motion = motionOf(rep("full"), still(1.5), rep("rehearsal", slowTempo), still(1.5), rep("half"));
    const finished = finishedOf(runClock(motion, 60, { angle: 0.01, grip: 0.01, body: 0.02 }));
    for (const [index, one] of finished.entries()) {
      for (const dated of one.checkpoints.filter(({ checkpoint }) => checkpoint !== "address")) {
        const truths = motion.checkpoints.filter((c) => c.rep === index && c.checkpoint === dated.checkpoint);
        const error = Math.min(...truths.map((truth) => Math.abs(truth.t - dated.t)));
        all++;
        if (error < 2 * dated.sd + 4) inside++;
      }
    }
    expect(all).toBeGreaterThan(15);
    expect(inside / all).toBeGreaterThan(0.9);
  });

  it("K3.5 a slow club is waited for until it has passed the ball, though it seems to come up again before", () => {
    const motion = motionOf(rep("rehearsal", { backswing: seconds(3), downswing: seconds(4) }));
    const impact = timeOf(motion, "impact");
    const wavering = (sample: SwingSample): SwingSample => {
      if (sample.shaft === null || Math.abs(sample.t - (impact - 25)) > 15) return sample;
      const { x, y, z } = sample.shaft.toHead;
      const [cos, sin] = [Math.cos(0.5), Math.sin(0.5)];
      const toHead = { x: cos * x + sin * z, y, z: cos * z - sin * x };
      return { ...sample, shaft: { ...sample.shaft, toHead } };
    };
    const [finished, ...others] = finishedOf(runClock(motion, 60, noNoise, wavering));
    expect(others).toEqual([]);
    const dated = finished?.checkpoints.find((one) => one.checkpoint === "impact");
    expect(Math.abs((dated?.t ?? 0) - impact)).toBeLessThan(60);
  });

  it("K2.7 finds the top of a slow half swing though a picture well before it shows the club turned further", () => {
    const motion = motionOf(rep("half", slowTempo));
    const truth = timeOf(motion, "top");
    const turnedFurther = (sample: SwingSample): SwingSample => {
      if (sample.shaft === null || Math.abs(sample.t - (truth - 350)) > 20) return sample;
      const { x, y, z } = sample.shaft.toHead;
      const length = Math.hypot(x, y, z - 0.4);
      return {
        ...sample,
        shaft: { ...sample.shaft, toHead: { x: x / length, y: y / length, z: (z - 0.4) / length } },
      };
    };
    const [finished] = finishedOf(runClock(motion, 60, noNoise, turnedFurther));
    const dated = (id: string) => finished?.checkpoints.find(({ checkpoint }) => checkpoint === id);
    expect(Math.abs((dated("top")?.t ?? 0) - truth)).toBeLessThan(60);
    expect(dated("arm-level-down")).toBeDefined();
  });

  it("K3.5 the head's passing over the ball's place at the top of a half swing is no impact", () => {
    const motion = motionOf(rep("half", slowTempo));
    const truth = timeOf(motion, "impact");
    const [finished] = finishedOf(runClock(motion, 60, { angle: 0.05, grip: 0.05, body: 0.02 }));
    const dated = finished?.checkpoints.find((one) => one.checkpoint === "impact");
    expect(Math.abs((dated?.t ?? 0) - truth)).toBeLessThan(200);
  });

  it("K3.1 pictures that end in a follow-through have the rep that it is of, once the club has had the time to pass the ball", () => {
    const motion = motionOf(rep("full"));
    const impact = timeOf(motion, "impact");
    const endedAt = (end: number): FinishedRep | null => {
      let state = startSwingClock(gripToHead(usualGolfer.station));
      for (const sample of trueSamples(motion, 60, noNoise, seededRandom(7))) {
        if (sample.t > end) break;
        const ran = runSwingClock(state, sample);
        state = ran.state;
        expect(ran.output.finished).toBeNull();
      }
      return endSwingClock(state);
    };
    expect(endedAt(impact - 50)).toBeNull();
    const finished = endedAt(impact + 400);
    expect(finished?.kind).toBe("full");
    expect(finished?.missing).toEqual([]);
  });

  it("finds the published tour tempo within 2 % (Grober and Cholewicki: 0.80 s back, 0.267 s down)", () => {
    const [finished] = finishedOf(runClock(motionOf(rep("full"))));
    expect(Math.abs((finished?.tempo?.backswingSeconds ?? 0) / 0.8 - 1)).toBeLessThan(0.02);
    expect(Math.abs((finished?.tempo?.downswingSeconds ?? 0) / 0.267 - 1)).toBeLessThan(0.02);
    expect(Math.abs((finished?.tempo?.ratio ?? 0) / (0.8 / 0.267) - 1)).toBeLessThan(0.02);
  });
});
