import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buttPoint } from "@overcue/shared-geometry/butt-point";
import { headPoint } from "@overcue/shared-geometry/head-point";
import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { seconds } from "@overcue/shared-geometry/units";
import { bodyMeasures } from "@overcue/client-capture/demo-motion/body-measures";
import {
  placesOf,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoPlaces,
  type DemoPlan,
  type DemoRepPlan,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { keyPath } from "@overcue/client-capture/demo-motion/key-path";
import { motionKnots } from "@overcue/client-capture/demo-motion/motion-knots";
import type { DemoPose } from "@overcue/client-capture/demo-motion/demo-pose";

const still = { do: "still", seconds: 1 } as const;
const planOf = (rep: DemoRepPlan, club = true): DemoPlan => ({
  golfer: usualGolfer,
  club,
  ball: true,
  items: [still, rep, still],
});
const full: DemoRepPlan = { do: "rep", kind: "full", places: placesOf(0), tempo: tourTempo };

const timeOf = (motion: DemoMotion, checkpoint: CheckpointId): number => {
  const found = motion.checkpoints.find((point) => point.checkpoint === checkpoint);
  if (!found) throw new Error(`no ${checkpoint}`);
  return found.t / 1000;
};
const clubAt = (motion: DemoMotion, checkpoint: CheckpointId) => {
  const { club } = motion.at(timeOf(motion, checkpoint));
  if (!club) throw new Error("no club");
  return club;
};
const buttY = (motion: DemoMotion, checkpoint: CheckpointId): number => {
  const butt = buttPoint(clubAt(motion, checkpoint));
  if (!butt.ok) throw new Error(butt.reason);
  return butt.point.y;
};
const headY = (motion: DemoMotion, checkpoint: CheckpointId): number =>
  headPoint(clubAt(motion, checkpoint), usualGolfer.station).y;
const apart = (a: { x: number; y: number; z: number }, b: { x: number; y: number; z: number }): number =>
  Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

const placesArbitrary: fc.Arbitrary<DemoPlaces> = fc.record({
  headAtTakeaway: fc.double({ min: -0.15, max: 0.25, noNaN: true }),
  headAtShaftLevelBack: fc.double({ min: -0.1, max: 0.4, noNaN: true }),
  buttBack: fc.double({ min: -0.5, max: 0.45, noNaN: true }),
  buttDown: fc.double({ min: -0.5, max: 0.45, noNaN: true }),
  headAtShaftLevelDown: fc.double({ min: -0.1, max: 0.4, noNaN: true }),
});

describe("demo motion: places and instants", () => {
  it("D1 passes exactly through every place that was set", () => {
    fc.assert(
      fc.property(placesArbitrary, (places) => {
        const motion = demoMotion(planOf({ ...full, places }));
        const micrometre = 6;
        expect(headY(motion, "takeaway")).toBeCloseTo(places.headAtTakeaway, micrometre);
        expect(headY(motion, "shaft-level-back")).toBeCloseTo(places.headAtShaftLevelBack, micrometre);
        expect(buttY(motion, "arm-level-back")).toBeCloseTo(places.buttBack, micrometre);
        expect(buttY(motion, "arm-level-down")).toBeCloseTo(places.buttDown, micrometre);
        expect(headY(motion, "shaft-level-down")).toBeCloseTo(places.headAtShaftLevelDown, micrometre);
      }),
      { numRuns: 25 },
    );
  });

  it("D2 passes every checkpoint once and in order, in swings of every flatness", () => {
    for (const flatToSteep of [-1.3, -1, 0, 1, 1.3]) {
      const motion = demoMotion(planOf({ ...full, places: placesOf(flatToSteep) }));
      expect(motion.checkpoints.map((point) => point.checkpoint)).toEqual(checkpointIds);
    }
  });

  it("D3 keeps to the definitions of the checkpoints", () => {
    const motion = demoMotion(planOf(full));
    expect(clubAt(motion, "shaft-level-back").toHead.z).toBeCloseTo(0, 6);
    expect(clubAt(motion, "shaft-level-down").toHead.z).toBeCloseTo(0, 6);
    for (const level of ["arm-level-back", "arm-level-down"] as const) {
      const { body } = motion.at(timeOf(motion, level));
      expect(body.leadHand.z).toBeCloseTo(body.leadShoulder.z, 6);
    }
    const { body, club } = motion.at(timeOf(motion, "takeaway"));
    expect(club?.grip.x).toBeCloseTo((body.trailHip.x + body.trailKnee.x) / 2, 6);
    expect(apart(clubAt(motion, "impact").head, clubAt(motion, "address").head)).toBeLessThan(1e-6);
  });

  it("D4 soles the club at address: butt height L sin(lie), run L cos(lie) (5-8 irons: hirekogolf.com, dimensionsguide.com)", () => {
    const { butt, head } = clubAt(demoMotion(planOf(full)), "address");
    expect(head.z).toBeCloseTo(0, 6);
    const { clubLength } = usualGolfer.station;
    const lie = (62 * Math.PI) / 180;
    expect(Math.abs(butt.z - clubLength * Math.sin(lie))).toBeLessThan(0.002);
    expect(Math.abs(butt.y - clubLength * Math.cos(lie))).toBeLessThan(0.002);
  });

  it("D5 has the tempo that was set", () => {
    for (const tempo of [tourTempo, slowTempo, { backswing: seconds(1), downswing: seconds(0.333) }]) {
      const motion = demoMotion(planOf({ ...full, tempo }));
      const top = timeOf(motion, "top");
      expect(top - timeOf(motion, "address")).toBeCloseTo(tempo.backswing, 4);
      expect(timeOf(motion, "impact") - top).toBeCloseTo(tempo.downswing, 4);
    }
  });

  it("D6 looks like a golf swing at arm level and at the top", () => {
    const motion = demoMotion(planOf(full));
    const back = clubAt(motion, "arm-level-back");
    const elevation = (Math.asin(back.toHead.z) * 180) / Math.PI;
    expect(elevation).toBeGreaterThan(50);
    expect(elevation).toBeLessThan(60);
    expect(back.grip.z).toBeGreaterThan(1.15);
    expect(back.grip.z).toBeLessThan(1.3);
    expect(clubAt(motion, "top").toHead.x).toBeGreaterThan(0.95);
  });
});

describe("demo motion: laws of the body", () => {
  const measures = bodyMeasures(usualGolfer.height);
  const kinds: DemoRepPlan[] = [
    full,
    { ...full, kind: "half" },
    { ...full, kind: "pump", tempo: slowTempo },
    { ...full, kind: "flow" },
    { ...full, kind: "continuous", swings: 3 },
    { ...full, kind: "rehearsal", tempo: slowTempo, hold: { at: "arm-level-back", seconds: 1.5 } },
  ];
  const everyPose = function* (motion: DemoMotion, step = 1 / 60): Generator<DemoPose> {
    for (let t = 0; t <= motion.duration; t += step) yield motion.at(t);
  };

  it("D7 keeps the bones of arms and legs as long as they are, the hands on the club, feet on the ground", () => {
    for (const rep of kinds) {
      for (const { body, club } of everyPose(demoMotion(planOf(rep)))) {
        for (const side of ["lead", "trail"] as const) {
          expect(apart(body[`${side}Shoulder`], body[`${side}Elbow`])).toBeCloseTo(measures.upperArm, 6);
          expect(apart(body[`${side}Elbow`], body[`${side}Wrist`])).toBeCloseTo(measures.forearm, 6);
          expect(apart(body[`${side}Wrist`], body[`${side}Hand`])).toBeCloseTo(measures.hand, 6);
          expect(apart(body[`${side}Hip`], body[`${side}Knee`])).toBeCloseTo(measures.thigh, 6);
          expect(apart(body[`${side}Knee`], body[`${side}Ankle`])).toBeCloseTo(measures.shank, 6);
          expect(body[`${side}Toe`].z).toBe(0);
        }
        expect(apart(body.leadHand, body.trailHand)).toBeCloseTo(0.09, 6);
        expect(club?.head.z ?? 0).toBeGreaterThan(-0.02);
      }
    }
  });

  it("D8 goes through every knot with the same place, rate and acceleration on both sides", () => {
    const channels = [
      "phi",
      "psi",
      "gripX",
      "gripY",
      "gripZ",
      "shoulderTurn",
      "hipTurn",
      "pelvisX",
      "trailHeelLift",
    ] as const;
    const near = 1e-6;
    for (const rep of kinds) {
      const { knots } = motionKnots(planOf(rep));
      const path = keyPath(knots);
      for (const { t, pose } of knots.slice(1, -1)) {
        for (const channel of channels) {
          expect(path.at(t)[channel]).toBeCloseTo(pose[channel], 9);
          const rate = path.rate(channel, t);
          const before = (rate - path.rate(channel, t - near)) / near;
          const after = (path.rate(channel, t + near) - rate) / near;
          expect(Math.abs(before - after)).toBeLessThan(0.05 + 0.002 * Math.abs(before));
        }
      }
    }
  });

  it("D9 turns the club no faster than fast golfers (1650 +- 211 degrees/s at the lead hand, Marsan et al. 2019, plus the club's own lag)", () => {
    const motion = demoMotion(planOf(full));
    let fastest = 0;
    const step = 1 / 500;
    for (let t = 0; t < motion.duration; t += step) {
      const a = motion.at(t).club?.toHead;
      const b = motion.at(t + step).club?.toHead;
      if (!a || !b) throw new Error("no club");
      fastest = Math.max(fastest, Math.acos(Math.min(1, a.x * b.x + a.y * b.y + a.z * b.z)) / step);
    }
    const degrees = (fastest * 180) / Math.PI;
    expect(degrees).toBeGreaterThan(1439);
    expect(degrees).toBeLessThan(2100);
  });
});
