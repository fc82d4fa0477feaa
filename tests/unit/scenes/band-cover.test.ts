import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverBelow } from "../../scenes/paint/band-cover.ts";

/** The same share by counting a fine grid of points in the pixel. */
function counted(edge: number, nx: number, ny: number): number {
  const side = 200;
  let below = 0;
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      const x = (column + 0.5) / side - 0.5;
      const y = (row + 0.5) / side - 0.5;
      if (x * nx + y * ny < edge) below++;
    }
  }
  return below / (side * side);
}

describe("the share of a pixel below an edge", () => {
  it("is what counting points in the pixel gives", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.9, max: 0.9, noNaN: true }),
        fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
        (edge, turn) =>
          Math.abs(coverBelow(edge, Math.cos(turn), Math.sin(turn)) - counted(edge, Math.cos(turn), Math.sin(turn))) <
          0.012,
      ),
      { numRuns: 60 },
    );
  });

  it("is one half through the middle, and all or nothing past the corners", () => {
    expect(coverBelow(0, 0.6, 0.8)).toBe(0.5);
    expect(coverBelow(0, 1, 0)).toBe(0.5);
    expect(coverBelow(0.71, Math.SQRT1_2, Math.SQRT1_2)).toBe(1);
    expect(coverBelow(-0.71, Math.SQRT1_2, Math.SQRT1_2)).toBe(0);
  });
});
