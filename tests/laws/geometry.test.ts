import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandAt, bandIntervals } from "@overcue/shared-geometry/band-interval";
import { buttPoint } from "@overcue/shared-geometry/butt-point";
import { ray } from "@overcue/shared-geometry/camera-ray";
import { project } from "@overcue/shared-geometry/camera-project";
import { bandOdds, decideBand } from "@overcue/shared-geometry/decide-band";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { normalBelow } from "@overcue/shared-geometry/normal-probability";
import { imagePoint, worldPoint } from "@overcue/shared-geometry/point";
import { anglesOf, directionOf } from "@overcue/shared-geometry/shaft-angles";
import { metres, pixels, radians } from "@overcue/shared-geometry/units";
import { leanForSpread } from "@overcue/shared-geometry/lean-posterior";
import { spreadAt, widestLean } from "@overcue/shared-geometry/view-shaft";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const handed = fc.constantFrom("right" as const, "left" as const);

const cameras = fc
  .record({
    x: number(-6, -2),
    y: number(-1, 2),
    z: number(0.4, 2),
    roll: number(-0.2, 0.2),
    focal: number(500, 1600),
    handed,
  })
  .map(({ x, y, z, roll, focal, handed: hand }) =>
    lookAtCamera({
      position: worldPoint(x, y, z),
      target: worldPoint(0, 0.5, 0.8),
      roll: radians(roll),
      focal: pixels(focal),
      width: pixels(720),
      height: pixels(1280),
      handed: hand,
    }),
  );

const layouts = fc
  .record({ toe: number(0.3, 1), shoe: number(0.1, 0.5), tolerance: number(0, 0.2) })
  .map(({ toe, shoe, tolerance }) => ({
    toeLine: metres(toe),
    heelLine: metres(toe + shoe),
    tolerance: metres(tolerance),
  }));

describe("camera", () => {
  it("C2 a place in the picture lies on its own line of sight", () => {
    fc.assert(
      fc.property(cameras, number(0, 720), number(0, 1280), number(0.5, 20), (camera, x, y, distance) => {
        const { origin, direction } = ray(camera, imagePoint(x, y));
        expect(Math.hypot(direction.x, direction.y, direction.z)).toBeCloseTo(1, 12);
        const point = worldPoint(
          origin.x + distance * direction.x,
          origin.y + distance * direction.y,
          origin.z + distance * direction.z,
        );
        const seen = project(camera, point);
        expect(seen).not.toBeNull();
        expect(Math.hypot((seen?.x ?? NaN) - x, (seen?.y ?? NaN) - y)).toBeLessThan(1e-7);
      }),
    );
  });

  it("C1 nothing behind the lens is seen", () => {
    fc.assert(
      fc.property(cameras, number(0.01, 5), (camera, behind) => {
        const [, , , , , , x, y, z] = camera.rotation;
        const { position } = camera;
        expect(
          project(camera, worldPoint(position.x - behind * x, position.y - behind * y, position.z - behind * z)),
        ).toBeNull();
      }),
    );
  });
});

describe("shaft", () => {
  it("L2 angles and direction are each other's way back", () => {
    fc.assert(
      fc.property(number(-Math.PI, Math.PI), number(-1.5, 1.5), (azimuth, elevation) => {
        const found = anglesOf(directionOf(azimuth, elevation));
        expect(found.elevation).toBeCloseTo(elevation, 9);
        expect(Math.cos(found.azimuth - azimuth)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("L3 a lean and the spread it is seen under are each other's way back, on either side of the widest", () => {
    fc.assert(
      fc.property(number(-1.5, 1.5), number(2, 6), number(0.5, 1.1), (lean, distance, length) => {
        const side = lean > widestLean(length, distance) ? 1 : -1;
        const found = leanForSpread(side, spreadAt(lean, length, distance), length, distance);
        expect(Math.abs(found - lean)).toBeLessThan(1e-6 + 1e-9 / Math.abs(lean - widestLean(length, distance)));
      }),
    );
  });

  it("R2 the butt point is that of the line: sliding the hands along the shaft changes nothing", () => {
    fc.assert(
      fc.property(number(-3, 3), number(0.4, 1.5), number(-0.3, 0.3), (azimuth, elevation, slide) => {
        const toHead = directionOf(azimuth, elevation);
        const one = buttPoint({ grip: worldPoint(0.1, 0.7, 1.2), toHead });
        const other = buttPoint({
          grip: worldPoint(0.1 + slide * toHead.x, 0.7 + slide * toHead.y, 1.2 + slide * toHead.z),
          toHead,
        });
        if (!one.ok || !other.ok) throw new Error("not a read-out");
        expect(Math.hypot(one.point.x - other.point.x, one.point.y - other.point.y)).toBeLessThan(1e-9);
      }),
    );
  });

  it("R2 turning and shifting everything about the vertical turns and shifts the butt point", () => {
    fc.assert(
      fc.property(
        number(-3, 3),
        number(0.4, 1.5),
        number(-3, 3),
        number(-2, 2),
        number(-2, 2),
        (azimuth, elevation, turn, dx, dy) => {
          const grip = worldPoint(-0.3, 0.8, 1.2);
          const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
          const moved = (p: { x: number; y: number }) => ({
            x: cos * p.x - sin * p.y + dx,
            y: sin * p.x + cos * p.y + dy,
          });
          const one = buttPoint({ grip, toHead: directionOf(azimuth, elevation) });
          const there = moved(grip);
          const other = buttPoint({
            grip: worldPoint(there.x, there.y, grip.z),
            toHead: directionOf(azimuth + turn, elevation),
          });
          if (!one.ok || !other.ok) throw new Error("not a read-out");
          const expected = moved(one.point);
          expect(Math.hypot(expected.x - other.point.x, expected.y - other.point.y)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe("bands", () => {
  it("B1 every place lies in one band, and the odds of all bands sum to 1", () => {
    fc.assert(
      fc.property(layouts, number(-1, 2), number(0, 0.5), (layout, y, sd) => {
        const holding = bandIntervals(layout).filter(({ from, to }, index) =>
          index % 2 === 1 ? y >= from && y <= to : y > from && y < to,
        );
        // Two lines that meet halfway share that one place; the farther one has it.
        expect(holding.map(({ band }) => band)).toContain(bandAt(y, layout));
        expect(bandOdds(y, sd, layout).reduce((sum, { odds }) => sum + odds, 0)).toBeCloseTo(1, 9);
      }),
    );
  });

  it("B2 a line's band holds both of its ends", () => {
    const layout = { toeLine: metres(0.5), heelLine: metres(0.75), tolerance: metres(0.0625) };
    expect(bandAt(0.0625, layout)).toBe("ball-line");
    expect(bandAt(-0.0625, layout)).toBe("ball-line");
    expect(bandAt(0.4375, layout)).toBe("toe-line");
    expect(bandAt(0.0626, layout)).toBe("ball-to-toe");
  });

  it("B3 is decided just where the best odds reach the setting, and names the two likeliest else", () => {
    fc.assert(
      fc.property(layouts, number(-1, 2), number(0.001, 0.5), number(0.5, 0.99), (layout, y, sd, setting) => {
        const odds = bandOdds(y, sd, layout)
          .map((band) => band.odds)
          .toSorted((a, b) => b - a);
        const decision = decideBand(y, sd, layout, setting);
        expect(decision.decided).toBe((odds[0] ?? 0) >= setting);
        const told = decision.decided ? [decision.odds] : decision.odds;
        expect(told).toStrictEqual(odds.slice(0, told.length));
      }),
    );
  });

  it("B4 the normal distribution is symmetric and rises", () => {
    fc.assert(
      fc.property(number(-8, 8), number(0, 2), (z, more) => {
        expect(normalBelow(z) + normalBelow(-z)).toBeCloseTo(1, 12);
        expect(normalBelow(z + more)).toBeGreaterThanOrEqual(normalBelow(z));
      }),
    );
    // Abramowitz and Stegun, table 26.1.
    expect(normalBelow(1)).toBeCloseTo(0.841344746068543, 12);
    expect(normalBelow(1.96)).toBeCloseTo(0.97500210485178, 12);
    expect(normalBelow(-4)).toBeCloseTo(0.0000316712418331, 15);
  });
});
