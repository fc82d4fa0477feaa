import { expect, test } from "vitest";
import { cutBackdrop, type BackdropChoice } from "../../scenes/place/photographs.ts";

const whole: BackdropChoice = { photograph: 0, tall: 1, across: 0.3, down: 0, mirrored: false };

/** Mean light of one channel in a part of a picture, shares of its size. */
function lightOf(choice: BackdropChoice, fromX: number, toX: number, fromY: number, toY: number): number {
  const { width, height, rgb } = cutBackdrop(choice, 90, 160);
  let sum = 0;
  let count = 0;
  for (let row = Math.floor(fromY * height); row < toY * height; row++) {
    for (let column = Math.floor(fromX * width); column < toX * width; column++) {
      sum += rgb[3 * (row * width + column)] ?? 0;
      count++;
    }
  }
  return sum / count;
}

test("each photograph is one: light between none and a white sheet's, and far from even", () => {
  for (const photograph of [0, 1, 2, 3]) {
    const { rgb } = cutBackdrop({ ...whole, photograph }, 90, 160);
    expect(rgb.length).toBe(3 * 90 * 160);
    const [least, most] = [Math.min(...rgb), Math.max(...rgb)];
    expect(least).toBeGreaterThanOrEqual(0);
    expect(most).toBeLessThanOrEqual(1);
    expect(most - least).toBeGreaterThan(0.3);
  }
});

test("the house stands to the right, and to the left where the part is mirrored", () => {
  const right = { ...whole, across: 0.8 };
  const difference = (choice: BackdropChoice): number =>
    lightOf(choice, 0.7, 1, 0.4, 0.6) - lightOf(choice, 0, 0.3, 0.4, 0.6);
  expect(Math.abs(difference(right))).toBeGreaterThan(0.2);
  expect(difference({ ...right, mirrored: true })).toBeCloseTo(-difference(right), 1);
});

test("a part of half the height shows a quarter of the whole, twice as large", () => {
  const corner = { ...whole, across: 0 };
  const part = { ...corner, tall: 0.5 };
  for (const [x, y] of [
    [0, 0],
    [0.5, 0.25],
    [0.25, 0.75],
  ] as const) {
    const large = lightOf(part, x, x + 0.25, y, y + 0.25);
    expect(large).toBeCloseTo(lightOf(corner, x / 2, (x + 0.25) / 2, y / 2, (y + 0.25) / 2), 1);
  }
});
