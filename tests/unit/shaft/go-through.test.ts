import { goThrough } from "@overcue/client-capture/shaft/go-through";
import { makeLineSweep, type LineSweep } from "@overcue/client-capture/shaft/line-sweep-state";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { expect, test } from "vitest";

const torso = 90;

/** A sweep in which two directions show something: `first`, and the opposite of one `aside` steps off it, `apart` working pixels from its line. */
function twoSides(first: number, aside: number, apart: number): { readonly sweep: LineSweep; readonly other: number } {
  const sweep = makeLineSweep(100, shaftTuning);
  sweep.evidence.fill(-5);
  const other = (first + sweep.directions / 2 + aside) % sweep.directions;
  sweep.evidence[first] = 20;
  sweep.evidence[other] = 18;
  sweep.offset[first] = 10;
  sweep.offset[other] = -10 + apart;
  return { sweep, other };
}

test("T28 a rope that goes on across the hands speaks for neither side, though its two halves come out a step apart", () => {
  for (const aside of [-2, 0, 1]) {
    const { sweep, other } = twoSides(30, aside, 1);
    goThrough(sweep, torso, 1, shaftTuning);
    expect(sweep.evidence[30]).toBeLessThan(4);
    expect(sweep.evidence[other]).toBeLessThan(4);
  }
});

test("T28 a line beside it, one farther round, and one where the hands have moved keep what they have", () => {
  for (const [aside, apart, weight] of [
    [0, 0.2 * torso, 1],
    [5, 0, 1],
    [0, 0, 0],
  ] as const) {
    const { sweep } = twoSides(30, aside, apart);
    goThrough(sweep, torso, weight, shaftTuning);
    expect(sweep.evidence[30]).toBe(20);
  }
});

test("T28 what was counted already along the very line is not counted twice", () => {
  const { sweep } = twoSides(30, 0, 0);
  sweep.through[30] = 18;
  goThrough(sweep, torso, 1, shaftTuning);
  expect(sweep.evidence[30]).toBe(20);
});
