import {
  emptyBackground,
  feedBackground,
  matchBackground,
  turnedSinceStart,
} from "@overcue/client-capture/shaft/slow-background";
import { emptyWorkPicture, shrinkPicture } from "@overcue/client-capture/shaft/work-picture";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { expect, test } from "vitest";
import { drawPicture, seeded } from "./draw-picture.ts";

/** A smooth scene of its own at every place, seen by a camera that has moved by (`dx`, `dy`). */
function scene(dx: number, dy: number): Picture {
  const width = 160;
  const height = 200;
  const luma = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const u = x - dx;
      const v = y - dy;
      luma[y * width + x] = 128 + 50 * Math.sin(u / 5 + v / 17) + 40 * Math.sin(v / 6 - u / 23);
    }
  }
  return { width, height, luma, chroma: null };
}

test.each([
  [0, 0],
  [2, -1],
  [-3, 2],
  [1.5, 0.5],
])("T19 a camera that sways by (%f, %f) pixels is followed to six tenths of a pixel", (dx, dy) => {
  const background = emptyBackground();
  const work = emptyWorkPicture();
  for (let i = 0; i < 4; i++) {
    shrinkPicture(scene(0, 0), 1, work, null, 0);
    matchBackground(background, work);
    feedBackground(background, work, 80, 80, 0.03, 3);
  }
  shrinkPicture(scene(dx, dy), 1, work, null, 0);
  expect(matchBackground(background, work)).toBe(true);
  expect(Math.abs(background.swayX - dx)).toBeLessThan(0.6);
  expect(Math.abs(background.swayY - dy)).toBeLessThan(0.6);
});

test("T19 a still camera before a horizon and posts does not sway, though a club swings before them", () => {
  const background = emptyBackground();
  const work = emptyWorkPicture();
  const random = seeded(5);
  for (let i = 0; i < 12; i++) {
    const lines = [
      { x: 0, y: 110, angle: 0, length: 240, width: 5, level: 170 },
      { x: 40, y: 40, angle: Math.PI / 2, length: 230, width: 9, level: 60 },
      { x: 213, y: 60, angle: Math.PI / 2, length: 170, width: 6, level: 60 },
      { x: 127, y: 213, angle: 0.9 - 0.3 * i, length: 107, width: 5, level: 205 },
    ];
    shrinkPicture(drawPicture(240, 426, 110, lines, 8, random), 1, work, null, 0);
    matchBackground(background, work);
    expect([background.swayX, background.swayY], `picture ${i}`).toEqual([0, 0]);
    feedBackground(background, work, 127, 213, 1 / 60, 3);
  }
});

test("T20 a picture of another size starts the background anew", () => {
  const background = emptyBackground();
  const work = emptyWorkPicture();
  for (let i = 0; i < 3; i++) {
    shrinkPicture(scene(0, 0), 1, work, null, 0);
    matchBackground(background, work);
    feedBackground(background, work, 80, 80, 0.03, 3);
  }
  shrinkPicture(scene(0, 0), 2, work, null, 0);
  expect(matchBackground(background, work)).toBe(false);
  expect(background.count).toBe(0);
});

test("T19 how far the camera has turned is kept where it turns so far that the background starts anew", () => {
  const background = emptyBackground();
  const work = emptyWorkPicture();
  let begun = 0;
  for (let i = 0; i < 30; i++) {
    shrinkPicture(scene(i < 4 ? 0 : i - 3, 0), 1, work, null, 0);
    matchBackground(background, work);
    if (background.count === 0) begun++;
    feedBackground(background, work, 80, 80, 0.03, 3);
  }
  // The first picture begins it; 12 % of 160 pixels begin it anew.
  expect(begun).toBe(2);
  expect(Math.abs(turnedSinceStart(background).x - 26)).toBeLessThan(2);
  expect(Math.abs(turnedSinceStart(background).y)).toBeLessThan(2);
});
