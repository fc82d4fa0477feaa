import { describe, expect, it } from "vitest";
import { buttPoint } from "@overcue/shared-geometry/butt-point";
import { buttPointSd } from "@overcue/shared-geometry/read-outs-of";
import { gripFromButt, gripToHead } from "@overcue/shared-geometry/grip-convention";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { clubHead } from "@overcue/shared-geometry/head-point";
import { worldPoint } from "@overcue/shared-geometry/point";
import { directionOf } from "@overcue/shared-geometry/shaft-angles";
import { metres, milliseconds } from "@overcue/shared-geometry/units";

const degree = Math.PI / 180;

describe("a club soled at address", () => {
  // Lengths: dimensionsguide.com/golf-club-dimensions; lies: hirekogolf.com blog 2007/11; heights and runs recomputed from them.
  it.each([
    ["5-iron", 38, 60, 836, 483],
    ["6-iron", 37.5, 61, 833, 462],
    ["7-iron", 37, 62, 830, 441],
  ] as const)("R1 gives a %s's butt height and run", (club, inches, lie, height, run) => {
    const settings = { ...defaultStation(club, "right"), clubLength: metres(inches * 0.0254) };
    const toHead = directionOf(-90 * degree, -lie * degree);
    const reach = gripToHead(settings);
    const grip = worldPoint(0, reach * Math.cos(lie * degree), reach * Math.sin(lie * degree));
    const head = clubHead({ grip, toHead }, settings);
    expect(Math.hypot(head.x, head.y, head.z)).toBeLessThan(1e-12);
    const butt = { y: grip.y - gripFromButt * toHead.y, z: grip.z - gripFromButt * toHead.z };
    expect(Math.abs(1000 * butt.z - height)).toBeLessThan(2);
    expect(Math.abs(1000 * butt.y - run)).toBeLessThan(2);
    expect(defaultStation(club, "right").clubLength).toBeCloseTo(inches * 0.0254, 9);
  });
});

describe("the butt point", () => {
  it.each([30, 45, 55, 65, 80])(
    "R2 is y - z / tan(elevation) for a shaft square to the target line at %d degrees",
    (elevation) => {
      const grip = worldPoint(0, 0.85, 1.25);
      const found = buttPoint({ grip, toHead: directionOf(90 * degree, elevation * degree) });
      if (!found.ok) throw new Error(found.reason);
      expect(found.point.y).toBeCloseTo(0.85 - 1.25 / Math.tan(elevation * degree), 12);
    },
  );

  // Derived: z / sin(elevation)^2 a radian; 32 mm a degree at 1.25 m and 55 degrees.
  it.each([
    [1.25, 45, 43.6],
    [1.25, 55, 32.5],
    [1.25, 65, 26.6],
    [1.0, 55, 26.0],
  ])("R3 at %d m and %d degrees moves by %d mm a degree", (z, elevation, millimetres) => {
    const covariance = new Array<number>(25).fill(0);
    covariance[24] = degree ** 2;
    const shaft = {
      t: milliseconds(0),
      grip: worldPoint(0, 0.8, z),
      toHead: directionOf(90 * degree, elevation * degree),
      covariance,
    };
    expect(1000 * buttPointSd(shaft).sdY).toBeCloseTo(millimetres, 1);
    const up = buttPoint({ grip: shaft.grip, toHead: directionOf(90 * degree, (elevation + 0.5) * degree) });
    const down = buttPoint({ grip: shaft.grip, toHead: directionOf(90 * degree, (elevation - 0.5) * degree) });
    if (!up.ok || !down.ok) throw new Error("not a read-out");
    expect(Math.abs(1000 * (up.point.y - down.point.y) - millimetres)).toBeLessThan(0.1);
  });

  it.each([
    [19.9, "too-flat"],
    [0.1, "too-flat"],
    [0, "points-up"],
    [-30, "points-up"],
  ])("R4 is no read-out at %d degrees: %s", (elevation, reason) => {
    const toHead = directionOf(90 * degree, elevation * degree);
    expect(buttPoint({ grip: worldPoint(0, 0.8, 1), toHead })).toStrictEqual({ ok: false, reason });
  });

  it("R4 is a read-out from 20 degrees on", () => {
    const toHead = directionOf(90 * degree, 20.0001 * degree);
    expect(buttPoint({ grip: worldPoint(0, 0.8, 1), toHead })).toMatchObject({ ok: true });
  });
});
