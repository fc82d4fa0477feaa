import { describe, expect, it } from "vitest";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { worldPoint, imagePoint } from "@overcue/shared-geometry/point";
import { project } from "@overcue/shared-geometry/camera-project";
import { angleApart, rotate } from "@overcue/shared-geometry/rotation";
import { solveStation } from "@overcue/shared-geometry/solve-station";
import type { StationInput } from "@overcue/shared-geometry/station-fit";
import { mirrorStick } from "@overcue/shared-geometry/stick-in-image";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { cautionSentences, stationRefusals, type StationRefusal } from "@overcue/shared-geometry/station-verdict";
import { metres, pixels } from "@overcue/shared-geometry/units";
import type { Camera } from "@overcue/shared-geometry/camera";
import { markedSticks, phone } from "./marked-station.ts";

const settings = defaultStation("7-iron", "right");
const size = { width: pixels(720), height: pixels(1280) };
const good = (): StationInput => ({ settings, ...size, sticks: markedSticks(phone(settings), settings) });

function expectSame(found: Camera, camera: Camera, within: number): void {
  const { x, y, z } = found.position;
  expect(Math.hypot(x - camera.position.x, y - camera.position.y, z - camera.position.z)).toBeLessThan(within);
  expect(angleApart(found.rotation, camera.rotation)).toBeLessThan(within);
}

describe("solving a station", () => {
  it.each(["right", "left"] as const)("S1 gives back the camera that saw it, %s-handed", (handed) => {
    const own = defaultStation("7-iron", handed);
    const camera = phone(own);
    const solved = solveStation({
      settings: own,
      ...size,
      sticks: markedSticks(camera, own),
      focal: { focal: 990, relativeSd: 0.15 },
    });
    if (solved.verdict === "refused") throw new Error(solved.reason);
    expect(solved.verdict).toBe("good");
    expect(solved.residualPixels).toBeLessThan(0.01);
    expect(solved.camera.handed).toBe(handed);
    expectSame(solved.camera, camera, 1e-3);
  });

  it("S1 a marked ball says where the sticks lie along the target line", () => {
    const camera = phone(settings);
    const sticks = markedSticks(camera, settings, { "ball-line": [0.1, 0, 0], "toe-line": [0.1, 0, 0] });
    const ball = project(camera, worldPoint(0, 0, 0.02135));
    if (ball === null) throw new Error("behind the lens");
    const xOf = (marked: StationInput["ball"]): number => {
      const solved = solveStation({ settings, ...size, sticks, ball: marked ?? null });
      if (solved.verdict === "refused") throw new Error(solved.reason);
      return solved.camera.position.x;
    };
    const without = Math.abs(xOf(null) - camera.position.x);
    const marked = Math.abs(xOf({ at: ball, sd: 1.5 }) - camera.position.x);
    expect(without).toBeGreaterThan(0.07);
    expect(marked).toBeLessThan(0.03);
  });

  it("S2 needs two sticks only", () => {
    const two = { ...settings, sticksPresent: ["ball-line", "heel-line"] as const };
    const camera = phone(two);
    const solved = solveStation({
      settings: two,
      ...size,
      sticks: markedSticks(camera, two),
      focal: { focal: 990, relativeSd: 0.15 },
    });
    if (solved.verdict === "refused") throw new Error(solved.reason);
    expectSame(solved.camera, camera, 1e-3);
  });

  it("S2 asks for a third stick only where there are two", () => {
    const cautionWith = (sticksPresent: StationSettings["sticksPresent"]): string | null => {
      const own = { ...settings, sticksPresent };
      const sticks = markedSticks(phone(own), own).map((stick) => ({
        ...stick,
        near: { ...stick.near, acrossSd: pixels(4) },
        far: { ...stick.far, acrossSd: pixels(4) },
      }));
      const solved = solveStation({ settings: own, ...size, sticks });
      if (solved.verdict === "refused") throw new Error(solved.reason);
      return solved.caution === null ? null : cautionSentences[solved.caution].cure;
    };
    expect(cautionWith(["ball-line", "heel-line"])).toContain("third stick");
    expect(cautionWith(["ball-line", "toe-line", "heel-line"])).toBe("Bring the phone nearer.");
  });

  it("S3 takes a stick with a hidden end as a line", () => {
    const camera = phone(settings);
    const sticks = markedSticks(camera, settings).map((stick) => {
      if (stick.line !== "toe-line") return stick;
      const half = imagePoint((stick.near.at.x + stick.far.at.x) / 2, (stick.near.at.y + stick.far.at.y) / 2);
      return { ...stick, far: { ...stick.far, at: half, isEnd: false } };
    });
    const solved = solveStation({ settings, ...size, sticks, focal: { focal: 990, relativeSd: 0.15 } });
    if (solved.verdict === "refused") throw new Error(solved.reason);
    expectSame(solved.camera, camera, 1e-3);
  });

  it("S3 notices itself that an end is hidden", () => {
    const camera = phone(settings);
    const sticks = markedSticks(camera, settings).map((stick) => {
      if (stick.line !== "heel-line") return stick;
      const half = imagePoint((stick.near.at.x + stick.far.at.x) / 2, (stick.near.at.y + stick.far.at.y) / 2);
      return { ...stick, far: { ...stick.far, at: half } };
    });
    const solved = solveStation({ settings, ...size, sticks, focal: { focal: 990, relativeSd: 0.15 } });
    if (solved.verdict === "refused") throw new Error(solved.reason);
    expectSame(solved.camera, camera, 1e-3);
  });

  it("S3 does not mind which end of a stick was marked first", () => {
    const input = good();
    const turned = input.sticks.map((stick) => ({ ...stick, near: stick.far, far: stick.near }));
    expect(solveStation({ ...input, sticks: turned })).toStrictEqual(solveStation(input));
  });

  it("S4 is surer with gravity than without", () => {
    const camera = phone(settings);
    const gravity = { down: rotate(camera.rotation, { x: 0, y: 0, z: -1 }), sd: 0.01 };
    const without = solveStation(good());
    const withIt = solveStation({ ...good(), gravity });
    if (without.verdict === "refused" || withIt.verdict === "refused") throw new Error("refused");
    for (let index = 0; index < 7; index++) {
      expect(withIt.covariance[8 * index]).toBeLessThanOrEqual((without.covariance[8 * index] ?? 0) * 1.0001);
    }
    expect(withIt.covariance[24]).toBeLessThan(0.9 * (without.covariance[24] ?? 0));
  });
});

/** What the golfer reads, word for word. */
const sentences: Readonly<Record<StationRefusal, readonly [wrong: string, cure: string]>> = {
  "too-few-sticks": [
    "Fewer than two sticks are marked, or the ball line is not among them.",
    "Mark the stick on the ball line and at least one other.",
  ],
  "distances-not-in-order": [
    "The distances do not make a station: the toe line must lie beyond the ball line and the heel line beyond the toe line.",
    "Measure from the ball line to the toes and to the heels again and enter both in metres.",
  ],
  "not-a-place": ["A stick's end has no place in the picture.", "Drag both handles of each stick onto its ends."],
  "too-short": [
    "The sticks look too short in the picture to tell where the phone stands.",
    "Bring the phone nearer, to about four metres behind the ball, or raise it to hand height.",
  ],
  mirrored: [
    "The picture shows the station the other way round.",
    "Check whether right-handed or left-handed is set, which stick is on the ball line, and that the phone stands behind the golfer.",
  ],
  "not-parallel": ["The sticks are not parallel.", "Lay them parallel to the ball line and mark them again."],
  "distances-contradict": [
    "The distances between the sticks are not the ones that were entered.",
    "Measure the toe line and the heel line from the ball line again, and check the sticks' length.",
  ],
  "tilt-contradicts": [
    "The phone's tilt sensor and the sticks disagree about which way is up.",
    "Check that the sticks lie flat on level ground, then mark them again.",
  ],
  "camera-on-ground": [
    "The phone stands too low to see the sticks apart.",
    "Raise the phone to hand height, 0.8 to 1.0 metres.",
  ],
  "not-behind-golfer": [
    "The phone does not look along the target line from behind the golfer.",
    "Stand the phone about four metres behind the ball, looking along the sticks.",
  ],
  "does-not-fit": [
    "No place of the phone explains where the sticks are seen.",
    "Check that each handle sits on its own stick, and that the sticks' length is right.",
  ],
};

describe("a station that cannot be used is refused with its sentence", () => {
  const camera = phone(settings);
  const sticks = markedSticks(camera, settings);
  const turned = markedSticks(camera, settings, { "ball-line": [0, 0, 0.12], "heel-line": [0, 0, -0.12] });
  const seenBy = (change: Parameters<typeof phone>[1]): StationInput => ({
    ...good(),
    sticks: markedSticks(phone(settings, change), settings),
  });
  const lied = { ...settings, heelLine: metres(1.35) };
  const cases: readonly (readonly [StationRefusal, StationInput])[] = [
    ["too-few-sticks", { ...good(), sticks: sticks.slice(0, 1) }],
    ["too-few-sticks", { ...good(), sticks: sticks.slice(1) }],
    ["distances-not-in-order", { ...good(), settings: { ...settings, heelLine: settings.toeLine } }],
    ["not-a-place", { ...good(), ball: { at: imagePoint(Number.NaN, 3), sd: 2 } }],
    ["too-short", { ...good(), sticks: sticks.map((stick) => ({ ...stick, far: stick.near })) }],
    ["mirrored", { ...good(), sticks: sticks.map((stick) => mirrorStick(stick, size.width)) }],
    ["not-parallel", { ...good(), sticks: turned }],
    [
      "distances-contradict",
      { ...good(), settings: lied, gravity: { down: rotate(camera.rotation, { x: 0, y: 0, z: -1 }), sd: 0.01 } },
    ],
    ["tilt-contradicts", { ...good(), gravity: { down: { x: 0.5, y: 0.5, z: 0.707 }, sd: 0.02 } }],
    ["camera-on-ground", seenBy({ position: worldPoint(-3, 0.5, 0.2), target: worldPoint(1, 0.5, 0.2) })],
    ["not-behind-golfer", seenBy({ position: worldPoint(0.2, -3.5, 1), target: worldPoint(0.2, 0.4, 0.5) })],
    ["does-not-fit", { ...good(), settings: { ...settings, stickLength: metres(0.6) } }],
  ];

  it.each(cases)("S5 %s", (reason, input) => {
    expect(solveStation(input)).toStrictEqual({
      verdict: "refused",
      reason,
      sentence: sentences[reason][0],
      whatToDo: sentences[reason][1],
    });
  });

  it("S5 each reason of the list has a case", () => {
    expect(new Set(cases.map(([reason]) => reason))).toStrictEqual(new Set(stationRefusals));
  });
});
