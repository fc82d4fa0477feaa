import { describe, expect, it } from "vitest";
import {
  evenPlaces,
  placesOf,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoDistraction,
  type DemoPlan,
  type DemoPlanItem,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { ballLiesAt } from "@overcue/client-capture/demo-motion/ball-lies-at";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { demoSession } from "@overcue/client-capture/demo-motion/demo-session";
import { seededRandom } from "@overcue/client-capture/frames/demo-golfer/seeded-random";
import { truthAt } from "@overcue/client-capture/demo-motion/truth-at";
import { checkpointIds } from "@overcue/shared-geometry/checkpoints";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { demoCamera } from "@overcue/client-capture/demo-motion/demo-camera";

const plan = (...items: DemoPlanItem[]): DemoPlan => ({
  golfer: usualGolfer,
  club: true,
  ball: true,
  items: [{ do: "still", seconds: 1 }, ...items, { do: "still", seconds: 1 }],
});
const rep = { do: "rep", places: evenPlaces } as const;
const namesOf = (given: DemoPlan): string[] => demoMotion(given).checkpoints.map((point) => point.checkpoint);

describe("demo motion: kinds of reps", () => {
  it("D2 takes the turn of a full finish for no top", () => {
    const { motion } = practiceSession(3);
    const full = motion.reps.findIndex((span) => span.plan.kind === "full");
    const names = motion.checkpoints.filter((point) => point.rep === full).map((point) => point.checkpoint);
    expect(names).toEqual(checkpointIds);
  });

  it("D10 a flow starts forward of the ball and has no address", () => {
    const names = namesOf(plan({ ...rep, kind: "flow", tempo: slowTempo }));
    expect(names).not.toContain("address");
    expect(names).toHaveLength(7);
  });

  it("D11 a pump comes to arm level three times before it goes through", () => {
    const names = namesOf(plan({ ...rep, kind: "pump", tempo: slowTempo }));
    expect(names.filter((name) => name === "arm-level-down")).toHaveLength(3);
    expect(names.filter((name) => name === "top")).toHaveLength(3);
    expect(names.filter((name) => name === "impact")).toHaveLength(1);
    expect(names.at(-1)).toBe("impact");
  });

  it("D12 back-and-forth is one rep a swing, the first from address", () => {
    const motion = demoMotion(plan({ ...rep, kind: "continuous", tempo: tourTempo, swings: 3 }));
    expect(motion.reps).toHaveLength(3);
    for (const [number, first] of [0, 1, 2].map((n) => [n, n === 0] as const)) {
      const own = motion.checkpoints.filter((point) => point.rep === number).map((point) => point.checkpoint);
      expect(own.includes("address")).toBe(first);
      expect(own.filter((name) => name !== "address")).toEqual([
        "takeaway",
        "shaft-level-back",
        "arm-level-back",
        "top",
        "arm-level-down",
        "shaft-level-down",
        "impact",
      ]);
    }
  });

  it("D13 a half swing turns round with the hands above the shoulder but below a full top", () => {
    const highest = (kind: "half" | "full"): number => {
      const motion = demoMotion(plan({ ...rep, kind, tempo: slowTempo }));
      const top = motion.checkpoints.find((point) => point.checkpoint === "top");
      return motion.at((top?.t ?? 0) / 1000).body.leadHand.z;
    };
    expect(highest("half")).toBeGreaterThan(1.25);
    expect(highest("half")).toBeLessThan(highest("full") - 0.1);
  });

  it("D14 a hold stands still at its checkpoint for its time", () => {
    for (const at of [
      "takeaway",
      "shaft-level-back",
      "arm-level-back",
      "top",
      "arm-level-down",
      "shaft-level-down",
    ] as const) {
      const motion = demoMotion(plan({ ...rep, kind: "rehearsal", tempo: slowTempo, hold: { at, seconds: 2 } }));
      const hold = motion.reps[0]?.hold;
      if (!hold) throw new Error("no hold");
      expect(hold.until - hold.from).toBeCloseTo(2, 9);
      expect(motion.at(hold.from + 0.1)).toEqual(motion.at(hold.until - 0.1));
      expect(motion.checkpoints.find((point) => point.checkpoint === at)?.t).toBeCloseTo(hold.from * 1000, 6);
      expect(motion.checkpoints).toHaveLength(8);
    }
  });

  it("D15 nothing that golfers do between reps is a rep, and each ends where it began", () => {
    const all: DemoDistraction[] = [
      "waggle",
      "practice-brush",
      "tee-up",
      "walk-away-and-back",
      "re-grip",
      "lean-on-club",
      "look-up",
    ];
    for (const what of all) {
      const motion = demoMotion(plan({ do: "distraction", what }));
      expect(motion.checkpoints).toEqual([]);
      expect(motion.repAt(motion.duration / 2)).toBeNull();
      const [first, last] = [motion.at(0), motion.at(motion.duration)];
      for (const joint of Object.keys(first.body) as (keyof typeof first.body)[]) {
        expect(last.body[joint].x).toBeCloseTo(first.body[joint].x, 6);
        expect(last.body[joint].y).toBeCloseTo(first.body[joint].y, 6);
      }
    }
  });

  it("D16 keeps the lead hand's arm-level crossing out of a practice brush", () => {
    const motion = demoMotion(plan({ do: "distraction", what: "practice-brush" }));
    for (let t = 0; t < motion.duration; t += 0.01) {
      const { body } = motion.at(t);
      expect(body.leadHand.z).toBeLessThan(body.leadShoulder.z - 0.2);
    }
  });

  it("D17 empty hands swing nothing", () => {
    const motion = demoMotion({ ...plan({ ...rep, kind: "full", tempo: tourTempo }), club: false });
    expect(motion.checkpoints).toEqual([]);
    expect(motion.at(2).club).toBeNull();
    expect(truthAt(motion, demoCamera(720, 1280, "right"), 2)).toBeNull();
  });
});

describe("demo session", () => {
  const wish = {
    golfer: usualGolfer,
    club: true,
    ball: false,
    reps: Array.from({ length: 4 }, () => ({ ...rep, kind: "rehearsal", tempo: slowTempo }) as const),
    distractions: ["waggle", "look-up"] as const,
    placesSd: 0.05,
    tempoSd: 0.1,
  };

  it("D18 is the same for the same random numbers and another for others", () => {
    expect(demoSession(wish, seededRandom(7))).toEqual(demoSession(wish, seededRandom(7)));
    expect(demoSession(wish, seededRandom(7))).not.toEqual(demoSession(wish, seededRandom(8)));
  });

  it("D19 varies the places about those wished, and not at all where told so", () => {
    const exact = demoSession({ ...wish, placesSd: 0, tempoSd: 0 }, seededRandom(3));
    const reps = exact.items.filter((item) => item.do === "rep");
    expect(reps).toHaveLength(4);
    for (const one of reps) expect(one.places).toEqual(evenPlaces);
    const varied = demoSession(wish, seededRandom(3)).items.filter((item) => item.do === "rep");
    const places = varied.map((one) => one.places.buttBack);
    expect(new Set(places).size).toBe(4);
    for (const place of places) expect(Math.abs(place - evenPlaces.buttBack)).toBeLessThan(0.3);
  });
});

describe("demo truth", () => {
  it("D20 mirrors the picture, not the world, for a left-handed golfer", () => {
    const motion = demoMotion(plan({ ...rep, kind: "full", places: placesOf(1), tempo: tourTempo }));
    for (const t of [0, 1.3, 1.6, 2]) {
      const right = truthAt(motion, demoCamera(720, 1280, "right"), t);
      const left = truthAt(motion, demoCamera(720, 1280, "left"), t);
      expect(left?.head).toEqual(right?.head);
      expect(left?.headInPicture.x).toBeCloseTo(720 - (right?.headInPicture.x ?? 0), 9);
      expect(left?.headInPicture.y).toBeCloseTo(right?.headInPicture.y ?? 0, 9);
    }
  });

  it("D21 takes the ball away at impact and puts the next one down", () => {
    const motion = demoMotion(plan({ ...rep, kind: "full", tempo: tourTempo }, { do: "still", seconds: 2 }));
    const impact = (motion.checkpoints.at(-1)?.t ?? 0) / 1000;
    expect(ballLiesAt(motion, impact - 0.01)).toBe(true);
    expect(ballLiesAt(motion, impact + 0.01)).toBe(false);
    expect(ballLiesAt(motion, motion.duration)).toBe(true);
  });
});
