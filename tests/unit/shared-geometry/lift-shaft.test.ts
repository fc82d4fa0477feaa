import { describe, expect, it } from "vitest";
import { angleBetween } from "@overcue/shared-geometry/angle";
import { project } from "@overcue/shared-geometry/camera-project";
import { exactCamera } from "@overcue/shared-geometry/camera-spread";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { clubHead } from "@overcue/shared-geometry/head-point";
import { liftShaft } from "@overcue/shared-geometry/lift-shaft";
import type { LiftObservation } from "@overcue/shared-geometry/lift-observation";
import { imagePoint, worldPoint } from "@overcue/shared-geometry/point";
import { readOutsOf } from "@overcue/shared-geometry/read-outs-of";
import { anglesOf, directionOf } from "@overcue/shared-geometry/shaft-angles";
import type { Handed } from "@overcue/shared-geometry/station";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { metres, milliseconds, pixels, radians } from "@overcue/shared-geometry/units";

const deg = Math.PI / 180;

describe.each<Handed>(["right", "left"])("lift, %s-handed", (handed) => {
  const camera = defaultCamera(pixels(720), pixels(1280), handed);
  const settings = defaultStation("7-iron", handed);

  it.each([
    ["arm level going back", 130, 55, 0.1, 0.45, 1.2, { defined: true }],
    ["shaft level going back", 175, 2, 0.0, 0.5, 0.9, { defined: false, reason: "too-flat" }],
    ["top", 10, 10, -0.2, 0.7, 1.7, { defined: false, reason: "too-flat" }],
  ])("L1 gives back the shaft it was drawn from: %s", (_, azimuth, elevation, x, y, z, butt) => {
    const toHead = directionOf(azimuth * deg, elevation * deg);
    const grip = worldPoint(x, y, z);
    const seenGrip = project(camera, grip);
    const seenHead = project(camera, clubHead({ grip, toHead }, settings));
    if (!seenGrip || !seenHead) throw new Error("not in front of the camera");
    const long = Math.hypot(seenHead.x - seenGrip.x, seenHead.y - seenGrip.y);
    const observation: LiftObservation = {
      t: milliseconds(0),
      grip: seenGrip,
      gripAlongSd: pixels(1e-4),
      offsetSd: pixels(1e-4),
      direction: { x: (seenHead.x - seenGrip.x) / long, y: (seenHead.y - seenGrip.y) / long },
      angleSd: radians(1e-7),
      head: { at: seenHead, alongSd: pixels(1e-4) },
      depth: { kind: "along-target-line", x: metres(x), sd: metres(1e-6) },
    };
    const lift = liftShaft(exactCamera(camera), observation, settings);
    if (!lift.ok) throw new Error(lift.reason);
    const truth = anglesOf(toHead);
    const insideItsSpread = lift.candidates.filter(({ grip: found, toHead: way, covariance }) => {
      const angles = anglesOf(way);
      const off = [found.x - x, found.y - y, found.z - z, angleBetween(truth.azimuth, angles.azimuth)];
      off.push(angles.elevation - truth.elevation);
      return off.every((miss, index) => Math.abs(miss) <= 1e-4 + Math.sqrt(covariance[6 * index] ?? 0));
    });
    expect(insideItsSpread).toHaveLength(1);
    const [best] = insideItsSpread;
    if (!best) throw new Error("no candidate");
    const readOuts = readOutsOf(best, settings, "arm-level-back");
    expect(readOuts.buttPoint).toMatchObject(butt);
    expect(readOuts.headPoint).toStrictEqual({ defined: false, reason: "not-read-here" });
  });
});

describe("what cannot be lifted", () => {
  const camera = defaultCamera(pixels(720), pixels(1280), "right");
  const settings = defaultStation("7-iron", "right");
  const usual: LiftObservation = {
    t: milliseconds(0),
    grip: imagePoint(360, 600),
    gripAlongSd: pixels(12),
    offsetSd: pixels(1),
    direction: { x: 0.6, y: 0.8 },
    angleSd: radians(0.01),
    head: null,
    depth: { kind: "along-target-line", x: metres(0), sd: metres(0.05) },
  };
  // Square to the target line every line of sight in the picture's middle column keeps its place along it.
  const acrossTheLine = lookAtCamera({
    position: worldPoint(0, -4, 1),
    target: worldPoint(0, 0, 1),
    roll: radians(0),
    focal: pixels(990),
    width: pixels(720),
    height: pixels(1280),
    handed: "right",
  });

  it.each([
    ["depth-undefined", acrossTheLine, { ...usual, grip: imagePoint(360, 640) }],
    ["behind-camera", camera, { ...usual, depth: { kind: "along-target-line", x: metres(-9), sd: metres(0.05) } }],
    ["behind-camera", camera, { ...usual, depth: { kind: "distance", distance: metres(-1), sd: metres(0.05) } }],
    ["bad-observation", camera, { ...usual, grip: imagePoint(Number.NaN, 600) }],
    [
      "bad-observation",
      camera,
      { ...usual, depth: { kind: "along-target-line", x: metres(Number.NaN), sd: metres(1) } },
    ],
    ["bad-observation", camera, { ...usual, direction: { x: 0, y: 0 } }],
  ] as const)("L4 is refused as %s", (reason, through, observation) => {
    expect(liftShaft(through, observation, settings)).toStrictEqual({ ok: false, reason });
  });

  it("L4 the usual observation is not", () => {
    expect(liftShaft(camera, usual, settings).ok).toBe(true);
  });
});
