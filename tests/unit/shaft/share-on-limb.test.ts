import { makeBodyMarks } from "@overcue/client-capture/shaft/mark-body";
import { shareOnLimb } from "@overcue/client-capture/shaft/share-on-limb";
import { expect, test } from "vitest";

const level = 89;

/** A window of 101 pixels a side in which a limb lies 10 to 30 pixels to the right of the middle, 5 pixels to either side. */
function oneLimb() {
  const marks = makeBodyMarks(101);
  for (let row = 45; row <= 55; row++) marks.free.fill(level, row * marks.size + 60, row * marks.size + 81);
  return marks;
}

test("T39 a line's share on a limb is that of its way, and a line beside one counts as far as a pose may be off", () => {
  const marks = oneLimb();
  expect(shareOnLimb(marks, [0, 0, 0], 10, 30, 0, level)).toBe(1);
  expect(shareOnLimb(marks, [0, 0, 0], 10, 49, 0, level)).toBeCloseTo(0.55, 1);
  expect(shareOnLimb(marks, [0, 12, 0], 10, 30, 0, level)).toBe(0);
  expect(shareOnLimb(marks, [0, 12, 0], 10, 30, 8, level)).toBe(1);
  expect(shareOnLimb(marks, [0, 0, Math.PI / 2], 10, 30, 0, level)).toBe(0);
});

test("T39 what is trusted more than a limb is none, and what lies outside of the window neither", () => {
  const marks = oneLimb();
  expect(shareOnLimb(marks, [0, 0, 0], 10, 30, 0, level - 1)).toBe(0);
  expect(shareOnLimb(marks, [0, 0, Math.PI], 60, 90, 0, level)).toBe(0);
  expect(shareOnLimb(marks, [0, 0, 0], 30, 10, 0, level)).toBe(0);
});
