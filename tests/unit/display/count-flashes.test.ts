import { describe, expect, test } from "vitest";
import { countFlashes } from "../../browser/display/count-flashes.ts";

/** Twenty pictures a second for two seconds; `lit` says how bright each of ten cells is at a time. */
const film = (lit: (at: number, cell: number) => number) =>
  Array.from({ length: 40 }, (_, index) => ({
    at: index * 50,
    cells: Array.from({ length: 10 }, (_, cell) => lit(index * 50, cell)),
  }));
/** Black and white in turn, `perSecond` times each. */
const blink = (at: number, perSecond: number) => (Math.floor((at / 1000) * perSecond * 2) % 2 === 0 ? 1 : 0);

describe("D15 counting flashes", () => {
  test("D15 a screen that blinks five times a second is caught", () => {
    expect(countFlashes(film((at) => blink(at, 5)))).toBe(5);
  });

  test("D15 so is a third of it, but not a tenth", () => {
    expect(countFlashes(film((at, cell) => (cell < 3 ? blink(at, 5) : 1)))).toBe(5);
    expect(countFlashes(film((at, cell) => (cell < 1 ? blink(at, 5) : 1)))).toBe(0);
  });

  test("D15 a slow change, a small one and a still screen are none", () => {
    expect(countFlashes(film((at) => at / 2000))).toBe(0);
    expect(countFlashes(film((at) => 0.5 + 0.04 * blink(at, 5)))).toBe(0);
    expect(countFlashes(film(() => 0.5))).toBe(0);
  });
});
