import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCanvas, wholeOf } from "../../scenes/canvas.ts";
import { paintStroke } from "../../scenes/paint/paint-stroke.ts";

const side = 80;

/** Light of a white stroke through the middle of a black canvas. */
function whiteStroke(turn: number, length: number, width: number, shiftX: number, shiftY: number) {
  const canvas = makeCanvas(side, side);
  const halfX = (Math.cos(turn) * length) / 2;
  const halfY = (Math.sin(turn) * length) / 2;
  const [x, y] = [side / 2 + shiftX, side / 2 + shiftY];
  const three = (value: number): [number, number, number] => [value, value, value];
  paintStroke(
    canvas,
    {
      kind: "stroke",
      sweep: {
        ax: three(x - halfX),
        ay: three(y - halfY),
        bx: three(x + halfX),
        by: three(y + halfY),
        radiusA: width / 2,
        radiusB: width / 2,
        depthA: 1,
        depthB: 1,
      },
      across: [[1, 1, 1]],
      cover: 1,
      opaque: true,
    },
    wholeOf(canvas),
  );
  return canvas;
}

describe("a painted stroke", () => {
  it("covers its width times its length, whatever its turn and place between pixels, from half a pixel's width on", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (turn, width, shiftX, shiftY) => {
          const { rgb } = whiteStroke(turn, 50, width, shiftX, shiftY);
          let covered = 0;
          for (let at = 0; at < rgb.length; at += 3) covered += rgb[at] ?? 0;
          return Math.abs(covered - 50 * width) < 0.015 * 50 * width;
        },
      ),
    );
  });

  it("gives each pixel exactly the share that it covers", () => {
    const { rgb } = whiteStroke(Math.PI / 2, 60, 1.7, 0.3, 0);
    const row = [38, 39, 40, 41, 42].map((column) => rgb[(40 * side + column) * 3] ?? NaN);
    [0, 0.55, 1, 0.15, 0].forEach((share, index) => {
      expect(row[index]).toBeCloseTo(share, 5);
    });
  });

  it("is hidden by what lies nearer", () => {
    const canvas = makeCanvas(8, 8);
    canvas.depth.fill(0.5);
    const still: [number, number, number] = [0, 0, 0];
    const far: [number, number, number] = [8, 8, 8];
    const sweep = { ax: still, ay: far, bx: far, by: still, radiusA: 2, radiusB: 2, depthA: 1, depthB: 1 };
    paintStroke(canvas, { kind: "stroke", sweep, across: [[1, 1, 1]], cover: 1, opaque: true }, wholeOf(canvas));
    expect(canvas.rgb.every((value) => value === 0)).toBe(true);
  });
});
