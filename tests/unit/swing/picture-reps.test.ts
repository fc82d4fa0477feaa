import { describe, expect, it } from "vitest";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import {
  evenPlaces,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoPlanItem,
  type DemoRepKind,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { pictureReps } from "@overcue/client-capture/swing/picture-reps";
import type { PictureMoment } from "@overcue/client-capture/swing/picture-moment";
import { project } from "@overcue/shared-geometry/camera-project";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Camera } from "@overcue/shared-geometry/camera";
import { pixels } from "@overcue/shared-geometry/units";
import { gaussian, seededRandom } from "../../scenes/random.ts";

const camera: Camera = defaultCamera(pixels(720), pixels(1280), "right");
const pixelsToTheMetre = camera.focal / 4;
const still: DemoPlanItem = { do: "still", seconds: 1 };

/** A motion as a camera down the line shows it, hands and shaft shaken by a pixel or two and the fast part without a shaft. */
function pictures(
  items: readonly DemoPlanItem[],
  framesPerSecond = 30,
): { moments: PictureMoment[]; motion: ReturnType<typeof demoMotion> } {
  const motion = demoMotion({ golfer: usualGolfer, club: true, ball: true, items: [still, ...items, still] });
  const random = seededRandom(5);
  const moments = Array.from({ length: Math.floor(motion.duration * framesPerSecond) }, (_, frame): PictureMoment => {
    const { body, club } = motion.at(frame / framesPerSecond);
    const grip = club && project(camera, club.grip);
    const head = club && project(camera, club.head);
    const hands = project(camera, body.trailHand);
    const shoulder = project(camera, body.leadShoulder);
    const shake = (): number => 0.7 * gaussian(random);
    return {
      t: (frame * 1000) / framesPerSecond,
      hands: hands && { x: hands.x + shake(), y: hands.y + shake() },
      shaft: grip && head && { angle: Math.atan2(head.y - grip.y, head.x - grip.x), grip, head },
      leadShoulder: shoulder,
      scale: pixelsToTheMetre,
    };
  });
  return { moments, motion };
}

describe("reps told from the picture alone", () => {
  it.each([
    ["a full swing", [{ do: "rep", kind: "full", places: evenPlaces, tempo: tourTempo } as const], 1],
    ["a slow rehearsal", [{ do: "rep", kind: "rehearsal", places: evenPlaces, tempo: slowTempo } as const], 1],
    [
      "a waggle and a practice brush",
      [{ do: "distraction", what: "waggle" } as const, still, { do: "distraction", what: "practice-brush" } as const],
      0,
    ],
    [
      "looking up and re-gripping",
      [{ do: "distraction", what: "look-up" } as const, still, { do: "distraction", what: "re-grip" } as const],
      0,
    ],
  ])("K3.1 finds the reps of %s", (_, items, count) => {
    expect(pictureReps(pictures(items).moments).length).toBe(count);
  });

  const rep = (kind: DemoRepKind): DemoPlanItem => ({
    do: "rep",
    kind,
    places: evenPlaces,
    tempo: kind === "rehearsal" ? slowTempo : tourTempo,
  });

  it.each<[string, DemoPlanItem[], string[]]>([
    [
      "a ball teed up first, the hands far lower than ever in the swing",
      [{ do: "distraction", what: "tee-up" }, still, rep("full")],
      ["full"],
    ],
    ["a pump and a half swing", [rep("pump"), still, rep("half")], ["pump", "half"]],
    ["back and forth without a stop", [rep("continuous")], ["full", "flow"]],
    [
      "a rehearsal held coming down",
      [{ ...rep("rehearsal"), hold: { at: "arm-level-down", seconds: 3 } } as DemoPlanItem],
      ["full"],
    ],
  ])("K5.1 finds and names the reps of %s", (_, items, kinds) => {
    expect(pictureReps(pictures(items).moments).map(({ kind }) => kind)).toEqual(kinds);
  });

  it("K5.3 a club that rests forward of the ball first makes a flow, which has neither address nor takeaway", () => {
    const { moments, motion } = pictures([rep("flow"), still, rep("full")], 60);
    const [flow, full] = pictureReps(moments);
    expect([flow?.kind, full?.kind]).toEqual(["flow", "full"]);
    const told = flow?.checkpoints.map(({ checkpoint }) => checkpoint) ?? [];
    expect(told).not.toContain("address");
    expect(told).not.toContain("takeaway");
    const truth = motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact")?.t ?? Number.NaN;
    const impact = flow?.checkpoints.find(({ checkpoint }) => checkpoint === "impact");
    expect(Math.abs((impact?.t ?? Number.NaN) - truth) / (impact?.sd ?? Number.NaN)).toBeLessThan(3);
  });

  it("K5.1 a club that is lifted and only lowered again is no rep", () => {
    const { moments, motion } = pictures([rep("rehearsal")]);
    const at = (id: CheckpointId): number => motion.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? 0;
    const lowered = moments.filter(({ t }) => t < at("impact"));
    const stays = lowered.at(-1);
    if (stays === undefined) throw new Error("the motion has no impact");
    const staying = Array.from({ length: 200 }, (_, index) => ({ ...stays, t: stays.t + (index + 1) * 33 }));
    expect(pictureReps([...lowered, ...staying])).toEqual([]);
  });

  it.each(["full", "rehearsal"] as const)(
    "K5.2 K5.3 every instant of a %s lies within three of its stated errors",
    (kind) => {
      const { moments, motion } = pictures([rep(kind)], 60);
      const [told] = pictureReps(moments);
      const dated = told?.checkpoints.filter(({ checkpoint }) => checkpoint !== "takeaway") ?? [];
      expect(dated).toHaveLength(7);
      for (const { checkpoint, t, sd } of dated) {
        const truth = motion.checkpoints.find((one) => one.checkpoint === checkpoint)?.t ?? Infinity;
        expect(Math.abs(t - truth) / sd, checkpoint).toBeLessThan(3);
      }
    },
  );

  it("K5.4 a golfer whose hands stay low at the top makes a full swing all the same where the club lies down there, and a half one where it stands up", () => {
    const lowered = (kind: DemoRepKind): PictureMoment[] =>
      pictures([rep(kind)], 60).moments.map((moment) => ({
        ...moment,
        leadShoulder: moment.leadShoulder && {
          ...moment.leadShoulder,
          y: moment.leadShoulder.y - 0.25 * pixelsToTheMetre,
        },
      }));
    expect(pictureReps(lowered("full")).map(({ kind }) => kind)).toEqual(["full"]);
    expect(pictureReps(lowered("half")).map(({ kind }) => kind)).toEqual(["half"]);
  });

  it("K5.4 a golfer whose hands stay low at the top and whose club is not seen there makes a full swing, unless they stay lower than any full swing's", () => {
    const unseen = (kind: DemoRepKind): PictureMoment[] => {
      const { moments, motion } = pictures([rep(kind)], 60);
      const top = motion.checkpoints.find(({ checkpoint }) => checkpoint === "top")?.t ?? Number.NaN;
      return moments.map((moment) => ({
        ...moment,
        shaft: Math.abs(moment.t - top) < 300 ? null : moment.shaft,
        leadShoulder: moment.leadShoulder && {
          ...moment.leadShoulder,
          y: moment.leadShoulder.y - 0.27 * pixelsToTheMetre,
        },
      }));
    };
    expect(pictureReps(unseen("full")).map(({ kind }) => kind)).toEqual(["full"]);
    expect(pictureReps(unseen("half")).map(({ kind }) => kind)).toEqual(["half"]);
  });

  it.each(["full", "flow"] as const)(
    "K5.11 impact of a %s is dated by the head, lowest in the picture at the ball",
    (kind) => {
      const { moments, motion } = pictures([rep(kind)], 60);
      const truth = motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact")?.t ?? Number.NaN;
      const impact = pictureReps(moments)[0]?.checkpoints.find(({ checkpoint }) => checkpoint === "impact");
      expect(Math.abs((impact?.t ?? Number.NaN) - truth)).toBeLessThan(8);
      expect(impact?.sd).toBeLessThan(15);
      const blurred = moments.map((moment) => (Math.abs(moment.t - truth) < 90 ? { ...moment, shaft: null } : moment));
      const byHands = pictureReps(blurred)[0]?.checkpoints.find(({ checkpoint }) => checkpoint === "impact");
      expect(byHands?.sd).toBeGreaterThanOrEqual(25);
      expect(Math.abs((byHands?.t ?? Number.NaN) - truth) / (byHands?.sd ?? Number.NaN)).toBeLessThan(3);
    },
  );

  it("K5.5 a club that is shifted shortly before a fast swing has not set off by that", () => {
    const { moments, motion } = pictures([rep("full")], 60);
    const truth = motion.checkpoints.find(({ checkpoint }) => checkpoint === "address")?.t ?? 0;
    const shifted = moments.map((moment): PictureMoment => {
      const { shaft, t } = moment;
      if (shaft === null || shaft.head === null || t > truth - 260) return moment;
      const longer = { x: shaft.head.x + 0.035 * pixelsToTheMetre, y: shaft.head.y + 0.035 * pixelsToTheMetre };
      return { ...moment, shaft: { ...shaft, head: longer } };
    });
    const takeaway = (of: readonly PictureMoment[]): number =>
      pictureReps(of)[0]?.checkpoints.find(({ checkpoint }) => checkpoint === "takeaway")?.t ?? Number.NaN;
    expect(takeaway(moments)).toBeGreaterThan(truth);
    expect(Math.abs(takeaway(shifted) - takeaway(moments))).toBeLessThan(60);
  });

  it("K5.5 a clip that is trimmed to two pictures before the swing sets off still has its rest", () => {
    const { moments, motion } = pictures([rep("full")]);
    const whole = pictureReps(moments)[0]?.checkpoints.find(({ checkpoint }) => checkpoint === "takeaway");
    const truth = motion.checkpoints.find(({ checkpoint }) => checkpoint === "address")?.t ?? 0;
    const [trimmed] = pictureReps(moments.filter(({ t }) => t > truth - 30));
    const takeaway = trimmed?.checkpoints.find(({ checkpoint }) => checkpoint === "takeaway");
    expect(trimmed?.kind).toBe("full");
    expect(Math.abs((takeaway?.t ?? Number.NaN) - (whole?.t ?? Number.NaN))).toBeLessThan(60);
  });

  it("K5.3 a swing that had set off when the clip began is no flow, and has neither address nor takeaway nor tempo", () => {
    const { moments, motion } = pictures([rep("full")], 60);
    const at = (id: CheckpointId): number => motion.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? 0;
    const [cut] = pictureReps(moments.filter(({ t }) => t > (at("takeaway") + at("shaft-level-back")) / 2));
    expect(cut).toMatchObject({ kind: "full", tempo: null });
    const told = cut?.checkpoints.map(({ checkpoint }) => checkpoint) ?? [];
    expect(told).toContain("impact");
    expect(told).not.toContain("address");
    expect(told).not.toContain("takeaway");
  });

  it("K5.6 the shaft's level coming down is dated where the next picture that shows it comes after the hands' low", () => {
    const { moments, motion } = pictures([rep("full")]);
    const at = (id: CheckpointId): number => motion.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? 0;
    const level = at("shaft-level-down");
    // All that a shutter open for long leaves of the way down: a picture well before, and one past the ball.
    const blurred = moments.map((moment) =>
      moment.t > level - 30 && moment.t < at("impact") + 15 ? { ...moment, shaft: null } : moment,
    );
    const dated = pictureReps(blurred)[0]?.checkpoints.find(({ checkpoint }) => checkpoint === "shaft-level-down");
    expect(Math.abs((dated?.t ?? Number.NaN) - level) / (dated?.sd ?? Number.NaN)).toBeLessThan(3);
  });

  it("dates top and impact within a frame or two at 30 pictures a second", () => {
    const { moments, motion } = pictures([{ do: "rep", kind: "full", places: evenPlaces, tempo: tourTempo }]);
    const [rep] = pictureReps(moments);
    for (const [checkpoint, frames] of [
      ["top", 2.5],
      ["impact", 1.5],
    ] as const) {
      const truth = motion.checkpoints.find((one) => one.checkpoint === checkpoint)?.t ?? Infinity;
      const dated = rep?.checkpoints.find((one) => one.checkpoint === checkpoint)?.t ?? 0;
      expect(Math.abs(dated - truth), checkpoint).toBeLessThan((frames * 1000) / 30);
    }
  });

  it("K3.4 says nothing of a clip without a club pointing down to the ball first", () => {
    const { moments } = pictures([{ do: "rep", kind: "full", places: evenPlaces, tempo: tourTempo }]);
    expect(pictureReps(moments.map((moment) => ({ ...moment, shaft: null })))).toEqual([]);
    expect(pictureReps([])).toEqual([]);
  });
});
