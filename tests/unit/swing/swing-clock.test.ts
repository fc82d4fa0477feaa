import { describe, expect, it } from "vitest";
import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import {
  evenPlaces,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoDistraction,
  type DemoPlanItem,
  type DemoRepKind,
  type DemoTempo,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { FinishedRep } from "@overcue/client-capture/swing/finish-rep";
import {
  endSwingClock,
  runSwingClock,
  startSwingClock,
  type SwingClockOutput,
} from "@overcue/client-capture/swing/swing-clock";
import type { SwingSample } from "@overcue/client-capture/swing/swing-sample";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { seconds } from "@overcue/shared-geometry/units";
import { noNoise, trueSamples, type SampleNoise } from "../../fakes/true-samples.ts";
import { seededRandom } from "../../scenes/random.ts";

const still = (seconds: number): DemoPlanItem => ({ do: "still", seconds });
const rep = (kind: DemoRepKind, tempo: DemoTempo = tourTempo): DemoPlanItem => ({
  do: "rep",
  kind,
  places: evenPlaces,
  tempo,
});
const motionOf = (...items: DemoPlanItem[]): DemoMotion =>
  demoMotion({ golfer: usualGolfer, club: true, ball: true, items: [still(1.2), ...items, still(1.5)] });

function run(
  motion: DemoMotion,
  framesPerSecond = 60,
  noise: SampleNoise = noNoise,
  spoil: (sample: SwingSample) => SwingSample = (sample) => sample,
): (SwingClockOutput & { t: number })[] {
  let state = startSwingClock(gripToHead(usualGolfer.station));
  return Array.from(trueSamples(motion, framesPerSecond, noise, seededRandom(7)), (sample) => {
    const ran = runSwingClock(state, spoil(sample));
    state = ran.state;
    return { ...ran.output, t: sample.t };
  });
}

/** Every other `period` milliseconds the shaft leans the other way along the target line. */
const wrongLean =
  (period: number) =>
  (sample: SwingSample): SwingSample => {
    if (sample.shaft === null || Math.floor(sample.t / period) % 2 === 0) return sample;
    const { toHead } = sample.shaft;
    return { ...sample, shaft: { ...sample.shaft, toHead: { ...toHead, x: -toHead.x } } };
  };

const finishedOf = (outputs: readonly SwingClockOutput[]) =>
  outputs.flatMap((output) => (output.finished === null ? [] : [output.finished]));

describe("reps", () => {
  it.each<[DemoRepKind, DemoTempo, string]>([
    ["full", tourTempo, "full"],
    ["half", tourTempo, "half"],
    ["pump", tourTempo, "pump"],
    ["flow", tourTempo, "flow"],
    ["rehearsal", slowTempo, "rehearsal"],
    ["pump", slowTempo, "pump"],
  ])("K3.3 a %s is told once and named", (kind, tempo, name) => {
    const finished = finishedOf(run(motionOf(rep(kind, tempo))));
    expect(finished.map((one) => one.kind)).toEqual([name]);
    expect(finished[0]?.missing).toEqual([]);
  });

  it("K3.3 a club that is misjudged for a tenth of a second on its way makes no pump", () => {
    const motion = motionOf(rep("full", slowTempo));
    const top = motion.checkpoints.find(({ checkpoint }) => checkpoint === "top")?.t ?? Number.NaN;
    const misjudged = (sample: SwingSample): SwingSample => {
      if (sample.shaft === null || sample.t < top - 300 || sample.t > top - 200) return sample;
      const { grip } = sample.shaft;
      return { ...sample, shaft: { ...sample.shaft, grip: { ...grip, z: grip.z - 0.7 } } };
    };
    const [finished, more] = finishedOf(run(motion, 60, noNoise, misjudged));
    expect(finished?.kind).toBe("rehearsal");
    expect(more).toBeUndefined();
    const told = finished?.checkpoints.find(({ checkpoint }) => checkpoint === "top")?.t ?? Number.NaN;
    expect(Math.abs(told - top)).toBeLessThan(100);
  });

  it("K3.1 every swing of a continuous run is a rep", () => {
    expect(finishedOf(run(motionOf(rep("continuous")))).length).toBe(2);
  });

  it.each<DemoDistraction>([
    "waggle",
    "practice-brush",
    "tee-up",
    "walk-away-and-back",
    "re-grip",
    "lean-on-club",
    "look-up",
  ])("K3.2 %s is no rep", (what) => {
    const outputs = run(motionOf({ do: "distraction", what }, still(1), rep("full")));
    const finished = finishedOf(outputs);
    expect(finished.length).toBe(1);
    expect(finished[0]?.kind).toBe("full");
  });

  it.each<[DemoRepKind, DemoTempo]>([
    ["full", tourTempo],
    ["half", tourTempo],
    ["rehearsal", slowTempo],
    ["flow", tourTempo],
  ])("K1.3 a lean the wrong way round loses no %s and moves no shaft level", (kind, tempo) => {
    const motion = motionOf(rep(kind, tempo));
    const right = finishedOf(run(motion));
    for (const period of [70, 260, 900]) {
      const wrong = finishedOf(run(motion, 60, noNoise, wrongLean(period)));
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
    const [finished] = finishedOf(run(motion));
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
    const finished = finishedOf(run(motion, 60, { angle: 0.01, grip: 0.01, body: 0.02 }));
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

  it("K3.4 a rep whose way down was not seen lacks those checkpoints, or is no rep; it never makes them up", () => {
    const motion = motionOf(rep("full", slowTempo));
    const hidden = motion.checkpoints.find((one) => one.checkpoint === "shaft-level-back")?.t ?? 0;
    let state = startSwingClock(gripToHead(usualGolfer.station));
    const outputs: SwingClockOutput[] = [];
    for (const sample of trueSamples(motion, 60, noNoise, seededRandom(1))) {
      const gone = Math.abs(sample.t - hidden) < 300;
      const ran = runSwingClock(state, gone ? { ...sample, shaft: null, tracked: false } : sample);
      state = ran.state;
      outputs.push(ran.output);
    }
    const [finished] = finishedOf(outputs);
    const level = finished?.checkpoints.find((one) => one.checkpoint === "shaft-level-back");
    expect(finished).toBeDefined();
    expect(level?.shaft ?? null).toBeNull();
  });

  it("K3.5 a slow club is waited for until it has passed the ball, though it seems to come up again before", () => {
    const motion = motionOf(rep("rehearsal", { backswing: seconds(3), downswing: seconds(4) }));
    const impact = motion.checkpoints.find((one) => one.checkpoint === "impact")?.t ?? 0;
    const wavering = (sample: SwingSample): SwingSample => {
      if (sample.shaft === null || Math.abs(sample.t - (impact - 25)) > 15) return sample;
      const { x, y, z } = sample.shaft.toHead;
      const [cos, sin] = [Math.cos(0.5), Math.sin(0.5)];
      const toHead = { x: cos * x + sin * z, y, z: cos * z - sin * x };
      return { ...sample, shaft: { ...sample.shaft, toHead } };
    };
    const [finished, ...others] = finishedOf(run(motion, 60, noNoise, wavering));
    expect(others).toEqual([]);
    const dated = finished?.checkpoints.find((one) => one.checkpoint === "impact");
    expect(Math.abs((dated?.t ?? 0) - impact)).toBeLessThan(60);
  });

  it("K2.7 finds the top of a slow half swing though a picture well before it shows the club turned further", () => {
    const motion = motionOf(rep("half", slowTempo));
    const truth = motion.checkpoints.find((one) => one.checkpoint === "top")?.t ?? 0;
    const turnedFurther = (sample: SwingSample): SwingSample => {
      if (sample.shaft === null || Math.abs(sample.t - (truth - 350)) > 20) return sample;
      const { x, y, z } = sample.shaft.toHead;
      const length = Math.hypot(x, y, z - 0.4);
      return {
        ...sample,
        shaft: { ...sample.shaft, toHead: { x: x / length, y: y / length, z: (z - 0.4) / length } },
      };
    };
    const [finished] = finishedOf(run(motion, 60, noNoise, turnedFurther));
    const dated = (id: string) => finished?.checkpoints.find(({ checkpoint }) => checkpoint === id);
    expect(Math.abs((dated("top")?.t ?? 0) - truth)).toBeLessThan(60);
    expect(dated("arm-level-down")).toBeDefined();
  });

  it("K2.7 where the club is out of sight about the top, the shortest way between where it went and where it came back does not tell it", () => {
    const motion = motionOf(rep("full", slowTempo));
    const truth = motion.checkpoints.find((one) => one.checkpoint === "top")?.t ?? 0;
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
    const [finished] = finishedOf(run(motion, 60, noNoise, guessed));
    const top = finished?.checkpoints.find(({ checkpoint }) => checkpoint === "top");
    expect(Math.abs((top?.t ?? 0) - truth)).toBeLessThan(40);
  });

  it("K3.5 the head's passing over the ball's place at the top of a half swing is no impact", () => {
    const motion = motionOf(rep("half", slowTempo));
    const truth = motion.checkpoints.find((one) => one.checkpoint === "impact")?.t ?? 0;
    const [finished] = finishedOf(run(motion, 60, { angle: 0.05, grip: 0.05, body: 0.02 }));
    const dated = finished?.checkpoints.find((one) => one.checkpoint === "impact");
    expect(Math.abs((dated?.t ?? 0) - truth)).toBeLessThan(200);
  });

  it("K3.5 a club out of sight, and supposed to turn on past the top and hang there, has not come down while the hands are high", () => {
    const motion = motionOf(rep("rehearsal", slowTempo));
    const top = motion.checkpoints.find(({ checkpoint }) => checkpoint === "top")?.t ?? Number.NaN;
    const unseen = (sample: SwingSample): SwingSample => {
      const after = sample.t - top;
      if (sample.shaft === null || after < 0 || after > 900) return sample;
      const droops = ((10 + Math.max(0, after - 540) / 4) * Math.PI) / 180;
      const toHead = { x: Math.cos(droops), y: 0, z: -Math.sin(droops) };
      return { ...sample, tracked: false, shaft: { ...sample.shaft, toHead }, alone: null };
    };
    const finished = finishedOf(run(motion, 60, noNoise, unseen));
    expect(finished.map(({ kind }) => kind)).toEqual(["rehearsal"]);
    expect(finished[0]?.missing).toEqual([]);
  });

  it("K3.1 pictures that end in a follow-through have the rep that it is of, once the club has had the time to pass the ball", () => {
    const motion = motionOf(rep("full"));
    const impact = motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact")?.t ?? Number.NaN;
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

  it("K3.6 a club that is held at the top, pointing away from the camera and unseen for three and a half seconds, loses no rep", () => {
    const hold = { at: "top", seconds: 3.4 } as const;
    const motion = motionOf({ do: "rep", kind: "rehearsal", places: evenPlaces, tempo: slowTempo, hold });
    const from = motion.checkpoints.find((one) => one.checkpoint === "top")?.t ?? 0;
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t < from || sample.t > from + 3500 ? sample : { ...sample, shaft: null, tracked: false };
    expect(finishedOf(run(motion, 60, noNoise, unseen)).map(({ kind }) => kind)).toEqual(["rehearsal"]);
  });

  it("K3.1 a club last seen past the ball, and next seen behind it on its way back, hung low in between", () => {
    const motion = motionOf({ do: "rep", kind: "continuous", places: evenPlaces, tempo: slowTempo, swings: 3 });
    const timesOf = (id: string) => motion.checkpoints.filter(({ checkpoint }) => checkpoint === id).map(({ t }) => t);
    const impacts = timesOf("impact");
    const level = timesOf("shaft-level-back");
    expect(impacts).toHaveLength(3);
    const unseen = (sample: SwingSample): SwingSample =>
      impacts.some((impact, at) => sample.t > impact + 350 && sample.t < (level[at + 1] ?? Infinity) + 60)
        ? { ...sample, shaft: null, alone: null, tracked: false }
        : sample;
    expect(finishedOf(run(motion, 60, noNoise, unseen))).toHaveLength(3);
  });

  it("K3.1 a rep whose club goes out of sight in the follow-through is told when that has had its time", () => {
    const motion = motionOf(rep("full"), still(4));
    const impact = motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact")?.t ?? Number.NaN;
    const unseen = (sample: SwingSample): SwingSample =>
      sample.t > impact + 200 ? { ...sample, shaft: null, alone: null, tracked: false } : sample;
    const [told, ...others] = run(motion, 60, noNoise, unseen).filter(({ finished }) => finished !== null);
    expect(others).toEqual([]);
    expect(told?.t).toBeLessThan(impact + 1600);
    expect(told?.finished?.missing).toEqual([]);
  });

  it("K3.4 a fast club that is out of sight from its way down until after the ball makes a rep without impact and tempo; out of sight for longer, none", () => {
    const motion = motionOf(rep("full"), still(2));
    const at = (id: string): number => motion.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? Number.NaN;
    const unseenFrom = (from: number) =>
      finishedOf(
        run(motion, 60, noNoise, (sample) =>
          sample.t > from && sample.t < at("impact") + 120
            ? { ...sample, shaft: null, alone: null, tracked: false, inPicture: null }
            : sample,
        ),
      );
    const [told, ...others] = unseenFrom(at("top") + 60);
    expect(others).toEqual([]);
    expect(told?.kind).toBe("full");
    expect(told?.missing).toEqual(["shaft-level-down", "impact"]);
    expect(told?.tempo).toBeNull();
    expect(unseenFrom(at("shaft-level-back"))).toEqual([]);
  });

  it("finds the published tour tempo within 2 % (Grober and Cholewicki: 0.80 s back, 0.267 s down)", () => {
    const [finished] = finishedOf(run(motionOf(rep("full"))));
    expect(Math.abs((finished?.tempo?.backswingSeconds ?? 0) / 0.8 - 1)).toBeLessThan(0.02);
    expect(Math.abs((finished?.tempo?.downswingSeconds ?? 0) / 0.267 - 1)).toBeLessThan(0.02);
    expect(Math.abs((finished?.tempo?.ratio ?? 0) / (0.8 / 0.267) - 1)).toBeLessThan(0.02);
  });
});

describe("live", () => {
  it("K4.1 tells a checkpoint live at most once a rep, and none of a full-speed way down at 30 pictures a second", () => {
    const slow = run(motionOf(rep("rehearsal", slowTempo))).flatMap((output) => output.passed);
    const names = slow.map((one) => one.checkpoint);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain("arm-level-back");
    expect(names).toContain("arm-level-down");
    const fast = run(motionOf(rep("full")), 30).flatMap((output) => output.passed);
    expect(fast.filter((one) => one.checkpoint === "shaft-level-down")).toEqual([]);
  });

  it("K4.1 states the error of what it tells live: nine in ten lie within two standard errors, in pictures as unsteady as live ones are", () => {
    const motion = motionOf(
      ...(["rehearsal", "half", "rehearsal"] as const).flatMap((kind) => [rep(kind, slowTempo), still(1.5)]),
    );
    const told = run(motion, 60, { angle: 0.03, grip: 0.03, body: 0.03 }).flatMap(({ passed }) => passed);
    const inside = told.filter(({ checkpoint, t, sd }) => {
      const truths = motion.checkpoints.filter((one) => one.checkpoint === checkpoint);
      return Math.min(...truths.map((truth) => Math.abs(truth.t - t))) < 2 * sd;
    });
    expect(told.length).toBeGreaterThan(10);
    expect(inside.length / told.length).toBeGreaterThan(0.9);
  });

  it("K4.2 names the checkpoint that the club is held at until it moves on", () => {
    const motion = motionOf({
      do: "rep",
      kind: "rehearsal",
      places: evenPlaces,
      tempo: slowTempo,
      hold: { at: "arm-level-back", seconds: 2 },
    });
    const outputs = run(motion);
    const held = outputs.filter((output) => output.phase === "hold");
    expect(held.length).toBeGreaterThan(60);
    expect(new Set(held.map((output) => output.checkpoint))).toEqual(new Set(["arm-level-back"]));
    expect(finishedOf(outputs).length).toBe(1);
  });
});
