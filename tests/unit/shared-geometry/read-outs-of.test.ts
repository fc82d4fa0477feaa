import { describe, expect, it } from "vitest";
import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { worldPoint } from "@overcue/shared-geometry/point";
import { assumedCamera, noReadOuts, readOutsOf } from "@overcue/shared-geometry/read-outs-of";
import { directionOf } from "@overcue/shared-geometry/shaft-angles";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

const degree = Math.PI / 180;
const settings = defaultStation("7-iron", "right");

const shaftOf = (elevation: number, angleSd = 1, placeSd = 0.01): ShaftInWorld => ({
  t: milliseconds(0),
  grip: worldPoint(-0.3, 0.85, 1.25),
  toHead: directionOf(95 * degree, elevation * degree),
  covariance: Array.from({ length: 25 }, (_, index) =>
    index % 6 !== 0 ? 0 : index < 18 ? placeSd ** 2 : (angleSd * degree) ** 2,
  ),
});

const read: Readonly<Record<CheckpointId, readonly string[]>> = {
  address: ["headPoint"],
  takeaway: ["headPoint"],
  "shaft-level-back": ["direction", "headPoint"],
  "arm-level-back": ["buttPoint"],
  top: ["direction"],
  "arm-level-down": ["buttPoint"],
  "shaft-level-down": ["direction", "headPoint"],
  impact: ["headPoint"],
};

describe("read-outs", () => {
  it.each(checkpointIds)("R5 at %s only what geometry and the table define is a number", (checkpoint) => {
    const { buttPoint, headPoint, direction, elevation, handHeight } = readOutsOf(shaftOf(55), settings, checkpoint);
    const ruled = { buttPoint, headPoint, direction };
    const numbers = Object.entries(ruled).flatMap(([name, readOut]) => (readOut.defined ? [name] : []));
    const reasons = Object.values(ruled).flatMap((readOut) => (readOut.defined ? [] : [readOut.reason]));
    expect(numbers.toSorted()).toStrictEqual([...read[checkpoint]].toSorted());
    expect(reasons).toStrictEqual(new Array(3 - read[checkpoint].length).fill("not-read-here"));
    expect([elevation.defined, handHeight.defined]).toStrictEqual([true, true]);
  });

  it.each([
    [15, "too-flat"],
    [-10, "points-up"],
  ] as const)("R4 a shaft at %d degrees has no butt point at arm level: %s", (elevation, reason) => {
    expect(readOutsOf(shaftOf(elevation), settings, "arm-level-down").buttPoint).toStrictEqual({
      defined: false,
      reason,
    });
  });

  it("R6 what is known too badly is no number", () => {
    const readOuts = readOutsOf(shaftOf(55, 25, 0.4), settings, null);
    for (const readOut of Object.values(readOuts)) {
      expect(readOut).toStrictEqual({ defined: false, reason: "too-uncertain" });
    }
  });

  it("R7 through a camera that nobody solved a place is known no better than a phone is put up by eye, and its band is open", () => {
    const shaft = shaftOf(55, 0.1, 0.001);
    const solved = readOutsOf(shaft, settings, "arm-level-back").buttPoint;
    const assumed = readOutsOf(shaft, settings, "arm-level-back", assumedCamera).buttPoint;
    if (!solved.defined || !assumed.defined) throw new Error("The butt point is a read-out here.");
    expect(assumedCamera.ground).toBeCloseTo(0.46, 2);
    expect([assumed.x, assumed.y]).toEqual([solved.x, solved.y]);
    expect(assumed.sdY).toBeCloseTo(Math.hypot(solved.sdY, assumedCamera.ground), 9);
    expect([solved.band.decided, assumed.band.decided]).toEqual([true, false]);
  });

  it("R6 a covariance that is no covariance is no number either", () => {
    const broken = { ...shaftOf(55), covariance: new Array<number>(25).fill(Number.NaN) };
    expect(readOutsOf(broken, settings, null).buttPoint).toStrictEqual({ defined: false, reason: "too-uncertain" });
  });

  it("R3 the butt point's standard error is that of its derivative", () => {
    const { buttPoint } = readOutsOf(
      { ...shaftOf(55, 1, 0), toHead: directionOf(90 * degree, 55 * degree) },
      settings,
      "arm-level-back",
    );
    expect(buttPoint).toMatchObject({ defined: true });
    expect(buttPoint.defined ? buttPoint.sdY : NaN).toBeCloseTo(0.0325, 4);
  });

  it("R5 without a shaft every read-out has the reason", () => {
    expect(Object.values(noReadOuts("no-camera"))).toStrictEqual(
      new Array(5).fill({ defined: false, reason: "no-camera" }),
    );
  });
});
