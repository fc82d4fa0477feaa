import { emptyBackground, feedBackground, matchBackground } from "@overcue/client-capture/shaft/slow-background";
import { shaftTuning, type ShaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { noRestedShaft, uncoverBackground } from "@overcue/client-capture/shaft/uncover-background";
import { emptyWorkPicture, shrinkPicture } from "@overcue/client-capture/shaft/work-picture";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";
import { drawBody, drawPicture, seeded, type DrawnLine } from "./draw-picture.ts";

const [width, height, torso] = [300, 400, 75];
const hands = { x: 150, y: 200 };
const [ground, club] = [90, 190];

const shaftAt = (degrees: number): DrawnLine => {
  const angle = (degrees * Math.PI) / 180;
  const [x, y] = [hands.x + 12 * Math.cos(angle), hands.y + 12 * Math.sin(angle)];
  return { x, y, angle, length: 115, width: 2.2, level: club };
};

/** What the background shows 60 pixels down the shaft that rested at `degrees`, grey levels. */
const shownAt = (background: ReturnType<typeof emptyBackground>, degrees: number): number => {
  const angle = (degrees * Math.PI) / 180;
  const [x, y] = [Math.round(hands.x + 60 * Math.cos(angle)), Math.round(hands.y + 60 * Math.sin(angle))];
  return (background.values[y * width + x] ?? 0) / 4;
};

/** A tracker that has seen the shaft in these directions, a picture each. */
function afterSeeing(angles: readonly number[], tuning: Partial<ShaftTuning> = {}): ReturnType<typeof emptyBackground> {
  const random = seeded(5);
  const tracker = startShaftTracker({ handed: "right", tuning });
  angles.forEach((angle, i) => {
    const picture = drawPicture(width, height, ground, [shaftAt(angle)], 4, random);
    const body = drawBody(i * 33, hands.x, hands.y, torso);
    trackShaft(tracker, { picture, t: milliseconds(i * 33), body });
  });
  return tracker.sight.background;
}

const resting = Array.from({ length: 20 }, () => 50);
const leaving = Array.from({ length: 12 }, (_, i) => 50 + 5 * (i + 1));

test("T59 once a club that rested has left, the standing background shows what it covered, and not the club", () => {
  expect(shownAt(afterSeeing(resting), 50)).toBeGreaterThan(ground + 50);
  expect(Math.abs(shownAt(afterSeeing([...resting, ...leaving]), 50) - ground)).toBeLessThan(10);
  expect(shownAt(afterSeeing([...resting, ...leaving], { restFor: Infinity }), 50)).toBeGreaterThan(ground + 40);
});

test("T59 while it is only setting off, the background stays as it was", () => {
  expect(shownAt(afterSeeing([...resting, 53, 57, 61]), 50)).toBeGreaterThan(ground + 40);
});

test("T59 a club that goes by leaves the background alone", () => {
  const background = emptyBackground();
  const work = emptyWorkPicture();
  shrinkPicture(drawPicture(width, height, ground, [], 0, seeded(1)), 1, work, null, 0);
  matchBackground(background, work);
  background.values.fill(4 * club);
  const rested = noRestedShaft();
  for (let i = 0; i < 20; i++) {
    const shaft = { t: 33 * i, ...hands, angle: 0.2 * i, reach: 120 };
    uncoverBackground(rested, background, work, shaft, torso, shaftTuning);
  }
  expect(background.values.every((value) => value === 4 * club)).toBe(true);
});

test("T59 where the camera sways, the place is that in the background, and nothing beside the shaft is touched", () => {
  const background = emptyBackground();
  const work = emptyWorkPicture();
  shrinkPicture(drawPicture(width, height, ground, [], 0, seeded(1)), 1, work, null, 0);
  for (let i = 0; i < 3; i++) {
    matchBackground(background, work);
    feedBackground(background, work, hands.x, hands.y, 0.03, 3);
  }
  background.values.fill(4 * club);
  const rested = noRestedShaft();
  [background.swayX, background.swayY] = [6, -4];
  for (const [t, angle] of [
    [0, 0],
    [400, 0.02],
    [500, 1],
  ] as const) {
    uncoverBackground(rested, background, work, { t, ...hands, angle, reach: 100 }, torso, shaftTuning);
  }
  const wide = shaftTuning.restWide * torso;
  const touched = [...background.values.entries()].flatMap(([at, value]) =>
    value === 4 * club ? [] : [{ x: at % width, y: Math.floor(at / width) }],
  );
  expect(Math.abs(Math.min(...touched.map(({ x }) => x)) - (hands.x - 6))).toBeLessThan(2);
  expect(Math.abs(Math.max(...touched.map(({ x }) => x)) - (hands.x - 6 + 100 + wide))).toBeLessThan(2);
  expect(touched.every(({ y }) => Math.abs(y - (hands.y + 4)) <= wide + 1)).toBe(true);
  expect(touched.length).toBeGreaterThan(100 * wide);
});

test("T59 bad numbers and a picture's edge do not make it fail", () => {
  const background = emptyBackground();
  const work = emptyWorkPicture();
  shrinkPicture(drawPicture(40, 30, ground, [], 0, seeded(1)), 1, work, null, 0);
  matchBackground(background, work);
  const rested = noRestedShaft();
  for (const [t, angle] of [
    [0, 0],
    [400, 0],
    [500, 2],
    [510, Number.NaN],
    [900, Number.NaN],
    [950, 1],
  ] as const) {
    uncoverBackground(rested, background, work, { t, x: 35, y: 25, angle, reach: 500 }, torso, shaftTuning);
  }
  expect(background.values.every(Number.isFinite)).toBe(true);
});
