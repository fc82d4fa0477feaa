import { describe, expect, it } from "vitest";
import { shaftAt } from "@overcue/client-capture/swing/shaft-at";
import { worldPoint } from "@overcue/shared-geometry/point";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

/** A shaft known exactly whose grip is where `x` says at `t` seconds. */
const shaftsAlong = (x: (t: number) => number): { readonly shaft: ShaftInWorld }[] =>
  Array.from({ length: 61 }, (_, index) => ({
    shaft: {
      t: milliseconds(index * 10),
      grip: worldPoint(x(index / 100), 0.4, 1),
      toHead: { x: -0.6, y: 0, z: -0.8 },
      covariance: Array.from({ length: 25 }, () => 0),
    },
  }));

const sdOfX = (shaft: ShaftInWorld | null): number => Math.sqrt(shaft?.covariance[0] ?? Number.NaN);

describe("the shaft at an instant", () => {
  it("K2.5 is uncertain by how far it goes within the instant's own error", () => {
    const shaft = shaftAt(
      shaftsAlong((t) => 2 * t),
      305,
      20,
    );
    expect(shaft?.grip.x).toBeCloseTo(0.61, 9);
    expect(sdOfX(shaft)).toBeCloseTo(0.04, 9);
  });

  it("K2.5 is uncertain where it turns round just then, too", () => {
    const shaft = shaftAt(
      shaftsAlong((t) => 40 * (t - 0.3) ** 2),
      300,
      50,
    );
    // 40 t^2 at sqrt(3) * 0.05 s is 0.3 m on both sides, a sixth each.
    expect(sdOfX(shaft)).toBeCloseTo(0.3 / Math.sqrt(3), 2);
  });

  it("K2.5 goes on as between its neighbours where no samples reach", () => {
    expect(
      sdOfX(
        shaftAt(
          shaftsAlong((t) => 2 * t),
          595,
          20,
        ),
      ),
    ).toBeCloseTo(0.04, 9);
    expect(
      sdOfX(
        shaftAt(
          shaftsAlong((t) => 2 * t),
          305,
          0,
        ),
      ),
    ).toBe(0);
  });

  it("K2.5 is uncertain by where it was on the far side of a gap that its own error reaches over, though it stands still on this side", () => {
    const heldThenAway = shaftsAlong((t) => (t < 0.2 ? 0 : 0.6)).filter((_, index) => index < 20 || index > 50);
    expect(sdOfX(shaftAt(heldThenAway, 100, 10))).toBe(0);
    // The far side lies 320 ms on from the near one: 60 ms past it is 0.1 m of the way over, a sixth of its square.
    const tenth = 0.6 * ((100 + Math.sqrt(3) * 90 - 190) / 320);
    expect(sdOfX(shaftAt(heldThenAway, 100, 90))).toBeCloseTo(tenth / Math.sqrt(6), 9);
  });

  it("K2.5 is uncertain by the whole way to the ends of the samples where its own error reaches beyond them", () => {
    const heldAtLast = shaftsAlong((t) => Math.max(0, 0.3 - t));
    expect(sdOfX(shaftAt(heldAtLast, 500, 2000))).toBeCloseTo(0.3 / Math.sqrt(6), 9);
  });

  it("K2.5 is no surer of where it went beyond the samples for being told of fewer of them", () => {
    const two = shaftsAlong((t) => 2 * t).slice(30, 32);
    expect(sdOfX(shaftAt(two, 305, 300))).toBeCloseTo(0.6, 9);
  });

  it("K3.4 is not known where the samples do not enclose the instant, or stand too far apart", () => {
    const samples = shaftsAlong((t) => t);
    expect(shaftAt(samples, -1, 5)).toBeNull();
    expect(shaftAt(samples, 601, 5)).toBeNull();
    expect(shaftAt([...samples.slice(0, 10), ...samples.slice(40)], 200, 5)).toBeNull();
  });
});
