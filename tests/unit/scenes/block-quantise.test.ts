import { describe, expect, it } from "vitest";
import { wholeOf } from "../../scenes/canvas.ts";
import { gaussian, seededRandom } from "../../scenes/random.ts";
import { quantiseBlocks, quantiserSteps } from "../../scenes/sensor/block-quantise.ts";

/** The forward transform as ITU-T T.81, A.3.3 writes it, and its inverse, with rounding to steps between: slow and plain. */
function byTheStandard(block: readonly number[], steps: Float32Array): readonly number[] {
  const c = (wave: number): number => (wave === 0 ? Math.SQRT1_2 : 1);
  const wave = (place: number, frequency: number): number => Math.cos(((2 * place + 1) * frequency * Math.PI) / 16);
  const levels: number[] = [];
  for (let v = 0; v < 8; v++) {
    for (let u = 0; u < 8; u++) {
      let sum = 0;
      for (let y = 0; y < 8; y++)
        for (let x = 0; x < 8; x++) sum += ((block[y * 8 + x] ?? 0) - 128) * wave(x, u) * wave(y, v);
      const step = steps[v * 8 + u] ?? 1;
      levels.push(Math.round((0.25 * c(u) * c(v) * sum) / step) * step);
    }
  }
  return block.map((_, at) => {
    let sum = 0;
    for (let v = 0; v < 8; v++) {
      for (let u = 0; u < 8; u++) sum += c(u) * c(v) * (levels[v * 8 + u] ?? 0) * wave(at % 8, u) * wave(at >> 3, v);
    }
    return 0.25 * sum + 128;
  });
}

describe("8x8 quantisation", () => {
  it("does to a block what the standard's formulas do", () => {
    const random = seededRandom(5);
    for (const quality of [30, 75, 95]) {
      const steps = quantiserSteps("luma", quality);
      const block = Array.from({ length: 64 }, (_, at) => 120 + 4 * (at % 8) + 20 * gaussian(random));
      const plane = Float32Array.from(block);
      quantiseBlocks(plane, 8, wholeOf({ width: 8, height: 8 }), steps);
      const expected = byTheStandard(block, steps);
      for (let at = 0; at < 64; at++) expect(plane[at]).toBeCloseTo(expected[at] ?? NaN, 2);
    }
  });

  it("has the published steps at quality 50 and steps of one at 100", () => {
    expect([...quantiserSteps("luma", 50)].slice(0, 4)).toEqual([16, 11, 10, 16]);
    expect([...quantiserSteps("chroma", 100)].every((step) => step === 1)).toBe(true);
  });
});
