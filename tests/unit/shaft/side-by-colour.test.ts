import { makeLineSweep } from "@overcue/client-capture/shaft/line-sweep-state";
import { makeLineWindow } from "@overcue/client-capture/shaft/line-window";
import { colourCells, type RodColour } from "@overcue/client-capture/shaft/rod-likeness";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { sideByColour } from "@overcue/client-capture/shaft/side-by-colour";
import { emptyWorkPicture } from "@overcue/client-capture/shaft/work-picture";
import { expect, test } from "vitest";

const torso = 60;
const size = 300;
const rod: RodColour = { likeness: new Uint8Array(colourCells ** 2).fill(200), blue: 128, red: 128 };

interface Shown {
  /** How far the line is seen to the right of the hands and to the left of them, torso lengths, and how far it is of the rod's colour. */
  readonly right: readonly [seen: number, coloured: number];
  readonly left: readonly [seen: number, coloured: number];
  readonly moving?: number;
  /** Likeness of everything about the line. */
  readonly about?: number;
}

/** Half log odds that the head is on the right. */
function sideOf({ right, left, moving = 1, about = 0 }: Shown): number {
  const window = makeLineWindow(140);
  Object.assign(window, { centreX: 150, centreY: 150 });
  const sweep = makeLineSweep(140, shaftTuning);
  const opposite = sweep.directions / 2;
  const work = { ...emptyWorkPicture(), width: size, height: size, likeness: new Uint8Array(size * size).fill(about) };
  for (let x = 0; x < size; x++) {
    const [, coloured] = x < 150 ? left : right;
    if (Math.abs(x - 150) > coloured * torso) continue;
    for (const y of [149, 150, 151]) work.likeness[y * size + x] = 200;
  }
  sweep.evidence.fill(0);
  sweep.evidence[0] = 20;
  sweep.evidence[opposite] = 20;
  sweep.end[0] = right[0] * torso;
  sweep.end[opposite] = left[0] * torso;
  sideByColour(sweep, window, work, rod, moving, torso, shaftTuning);
  expect(sweep.side[opposite]).toBe(0 - (sweep.side[0] ?? Number.NaN));
  return sweep.side[0] ?? Number.NaN;
}

test("T52 the end that goes on beyond the rod's colour is the head's", () => {
  expect(sideOf({ right: [1.6, 0.7], left: [1.1, 1.1] })).toBeGreaterThan(0.5);
  expect(sideOf({ right: [1.1, 1.1], left: [1.6, 0.7] })).toBeLessThan(-0.5);
});

test("T52 where both ends go on alike, or nothing is of the colour, or all about it is too, nothing is told", () => {
  expect(sideOf({ right: [1.5, 1.1], left: [1.5, 1.1] })).toBeCloseTo(0);
  expect(sideOf({ right: [1.6, 0], left: [0.8, 0] })).toBeCloseTo(0);
  expect(sideOf({ right: [1.6, 0.7], left: [1.1, 1.1], about: 190 })).toBeCloseTo(0);
});

test("T52 while nothing moves nothing is told", () => {
  expect(sideOf({ right: [1.6, 0.7], left: [1.1, 1.1], moving: 0 })).toBeCloseTo(0);
});
