import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { angleBetween, wrapAngle } from "@overcue/shared-geometry/angle";
import { radians } from "@overcue/shared-geometry/units";

describe("angle", () => {
  it("wraps into (-pi, pi], the lower end open", () => {
    expect(wrapAngle(radians(Math.PI))).toBe(Math.PI);
    expect(wrapAngle(radians(-Math.PI))).toBe(Math.PI);
    expect(wrapAngle(radians(3 * Math.PI))).toBeCloseTo(Math.PI, 12);
    expect(wrapAngle(radians(0))).toBe(0);
  });

  it("keeps the direction", () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (angle) => {
        const wrapped = wrapAngle(radians(angle));
        return (
          wrapped > -Math.PI &&
          wrapped <= Math.PI &&
          Math.abs(Math.cos(wrapped) - Math.cos(angle)) < 1e-9 &&
          Math.abs(Math.sin(wrapped) - Math.sin(angle)) < 1e-9
        );
      }),
    );
  });

  it("turns the short way", () => {
    expect(angleBetween(radians(3), radians(-3))).toBeCloseTo(2 * Math.PI - 6, 12);
  });
});
