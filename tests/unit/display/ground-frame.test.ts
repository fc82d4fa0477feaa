import { metres } from "@overcue/shared-geometry/units";
import { groundFrame, screenPlaces, stripOf } from "@overcue/client-display/ground-view/draw-list/ground-frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const layout = { toeLine: metres(0.575), heelLine: metres(0.875), tolerance: metres(0.05) };
const area = { x: 0, y: 0, width: 1280, height: 800 };
const place = fc.constantFrom(...screenPlaces);
const handed = fc.constantFrom("right" as const, "left" as const);
const coordinate = fc.double({ min: -2, max: 2, noNaN: true });

describe("D1 the ground as the golfer looks down on it", () => {
  test("D1 in front: ball line above toes above heels, the target to the left of a right-hander and to the right of a left-hander", () => {
    for (const [hand, side] of [
      ["right", -1],
      ["left", 1],
    ] as const) {
      const { toScreen } = groundFrame(area, layout, hand, "in-front");
      expect(toScreen(0, 0).y).toBeLessThan(toScreen(0, layout.toeLine).y);
      expect(toScreen(0, layout.toeLine).y).toBeLessThan(toScreen(0, layout.heelLine).y);
      expect(Math.sign(toScreen(1, 0).x - toScreen(0, 0).x)).toBe(side);
    }
  });

  test("D1 on the target's side: the target is up, the ball to the right of a right-hander who looks there", () => {
    const { toScreen } = groundFrame(area, layout, "right", "target-side");
    expect(toScreen(1, 0).y).toBeLessThan(toScreen(0, 0).y);
    expect(toScreen(0, 0).x).toBeGreaterThan(toScreen(0, layout.heelLine).x);
  });

  test("D1 on the side away from the target: the target is down, the ball to the left of a right-hander", () => {
    const { toScreen } = groundFrame(area, layout, "right", "away-side");
    expect(toScreen(1, 0).y).toBeGreaterThan(toScreen(0, 0).y);
    expect(toScreen(0, 0).x).toBeLessThan(toScreen(0, layout.heelLine).x);
  });

  test("D1 a left-hander's picture is the mirror image of a right-hander's", () => {
    fc.assert(
      fc.property(place, coordinate, coordinate, (where, x, y) => {
        const right = groundFrame(area, layout, "right", where).toScreen(x, y);
        const left = groundFrame(area, layout, "left", where).toScreen(x, y);
        expect(left.x).toBeCloseTo(area.width - right.x, 6);
        expect(left.y).toBeCloseTo(right.y, 6);
      }),
    );
  });

  test("D1 distances keep one scale in every direction", () => {
    fc.assert(
      fc.property(place, handed, coordinate, coordinate, coordinate, coordinate, (where, hand, ax, ay, bx, by) => {
        const { toScreen, pixelsPerMetre } = groundFrame(area, layout, hand, where);
        const a = toScreen(ax, ay);
        const b = toScreen(bx, by);
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeCloseTo(pixelsPerMetre * Math.hypot(ax - bx, ay - by), 6);
      }),
    );
  });

  test("D1 everything from beyond the ball to behind the heels is in view, whatever the shape of the screen", () => {
    fc.assert(
      fc.property(
        place,
        handed,
        fc.integer({ min: 100, max: 4000 }),
        fc.integer({ min: 100, max: 4000 }),
        (where, hand, width, height) => {
          const { toScreen } = groundFrame({ x: 0, y: 0, width, height }, layout, hand, where);
          for (const y of [-0.42, layout.heelLine + 0.2]) {
            for (const x of [-0.5, 0.5]) {
              const point = toScreen(x, y);
              expect(point.x).toBeGreaterThanOrEqual(-1e-6);
              expect(point.x).toBeLessThanOrEqual(width + 1e-6);
              expect(point.y).toBeGreaterThanOrEqual(-1e-6);
              expect(point.y).toBeLessThanOrEqual(height + 1e-6);
            }
          }
        },
      ),
    );
  });

  test("D1 a strip is cut to the view, and one wholly outside is none", () => {
    const frame = groundFrame(area, layout, "right", "in-front");
    const beyond = stripOf(frame, -Infinity, -0.05);
    expect(beyond?.y).toBeCloseTo(0, 6);
    expect(beyond?.height).toBeCloseTo(frame.toScreen(0, -0.05).y, 6);
    expect(stripOf(frame, frame.nearest + 0.1, Infinity)).toBeNull();
    expect(stripOf(frame, 0.3, 0.3)).toBeNull();
  });
});
