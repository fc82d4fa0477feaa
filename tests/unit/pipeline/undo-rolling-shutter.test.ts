import { describe, expect, it } from "vitest";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { gripRate } from "@overcue/client-capture/pipeline/grip-rate";
import { undoRollingShutter } from "@overcue/client-capture/pipeline/undo-rolling-shutter";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { readAtOnce, readingWays, type ReadingWay } from "@overcue/shared-geometry/rolling-shutter";
import { milliseconds, pixels, radians, radiansPerSecond } from "@overcue/shared-geometry/units";
import { sceneOf, type ConditionName } from "../../scenes/conditions.ts";
import { truthInPicture } from "../../scenes/truth-in-picture.ts";

type Tracked = Extract<ShaftInImage, { status: "tracked" }>;

const degree = Math.PI / 180;
const sd = radians(0.3 * degree);

const seen = (t: number, grip: Point<"image">, head: Point<"image"> | null, angle: number, rate: number): Tracked => ({
  status: "tracked",
  t: milliseconds(t),
  grip,
  head,
  angle: radians(angle),
  sd,
  angularRate: radiansPerSecond(rate),
  offsetSd: pixels(1),
  headSd: head === null ? null : pixels(4),
  rodSeen: false,
});

const tracked = (shaft: ShaftInImage): Tracked => {
  if (shaft.status !== "tracked") throw new Error("not tracked");
  return shaft;
};

const off = (a: number, b: number): number => Math.abs(wrapAngle(radians(a - b))) / degree;

const size = { width: 720, height: 1280, interval: 1000 / 60 };
const rate = { x: -900, y: 500 };

/** A stiff shaft of 400 pixels that turns by 12 radians a second in hands that go by `rate`, each place drawn where it was when its line was read. */
function drawn(towards: ReadingWay, time: number): { readonly shaft: Tracked; readonly truth: number } {
  const [angle, turning, length] = [0.7, 12, 400];
  const place = (along: number): Point<"image"> => {
    let at = imagePoint(300, 500);
    for (let round = 0; round < 20; round++) {
      const share = {
        down: at.y / size.height,
        up: 1 - at.y / size.height,
        right: at.x / size.width,
        left: 1 - at.x / size.width,
      }[towards];
      const after = (time / 1000) * (share - 0.5);
      const now = angle + turning * after;
      at = imagePoint(300 + rate.x * after + along * Math.cos(now), 500 + rate.y * after + along * Math.sin(now));
    }
    return at;
  };
  const [grip, head] = [place(0), place(length)];
  return { shaft: seen(0, grip, head, Math.atan2(head.y - grip.y, head.x - grip.x), turning), truth: angle };
}

/** A whole swing of a scene as pictures read line by line show it, and the direction that pictures taken all at once would show. */
function swing(condition: ConditionName, seed: number) {
  const scene = sceneOf(condition, seed);
  const motion = demoMotion(scene.plan);
  const view = { camera: scene.camera, shiftX: 0, shiftY: 0 };
  const shutter = { time: milliseconds(scene.readOutMs), towards: "down" } as const;
  const angleAt = (t: number): number => truthInPicture(motion, view, t, 0, 0)?.angleInPicture ?? Number.NaN;
  const shafts: Tracked[] = [];
  for (let t = scene.fromMs; t < scene.toMs; t += 1000 / scene.framesPerSecond) {
    const truth = truthInPicture(motion, view, t, scene.readOutMs, 0);
    if (truth === null) throw new Error("no club");
    const turning = wrapAngle(radians(angleAt(t + 4) - angleAt(t - 4))) / 0.008;
    shafts.push(seen(t, truth.gripInPicture, truth.headInPicture, truth.angleInPicture, turning));
  }
  const picture = { shutter, width: scene.camera.width, height: scene.camera.height, interval: 1000 / 60 };
  const undone = shafts.map((shaft, at) =>
    tracked(undoRollingShutter(shaft, gripRate(shafts.slice(Math.max(0, at - 3), at + 4)), picture)),
  );
  return shafts.map((shaft, at) => {
    const there = undone[at] ?? shaft;
    const truth = angleAt(shaft.t);
    return { skew: off(shaft.angle, truth), left: off(there.angle, truth), stated: there.sd / degree };
  });
}

describe("a picture that is read line by line", () => {
  it.each(readingWays)("L7 is put right whichever way it is read: %s", (towards) => {
    const { shaft, truth } = drawn(towards, 15);
    const shutter = { time: milliseconds(15), towards };
    const undone = tracked(undoRollingShutter(shaft, rate, { ...size, shutter }));
    expect(off(shaft.angle, truth)).toBeGreaterThan(1);
    expect(off(undone.angle, truth)).toBeLessThan(0.12 * off(shaft.angle, truth));
    expect(undone.grip.x).toBeCloseTo(300, 0);
    expect(undone.grip.y).toBeCloseTo(500, 0);
  });

  it("L7 skews a fast shaft by degrees, of which a fifth is left, within three of its own sds", () => {
    const pictures = [101, 102, 103, 104].flatMap((seed) => swing("full 60 1/500", seed));
    const fast = pictures.filter(({ skew }) => skew > 1);
    const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(fast.length).toBeGreaterThan(40);
    expect(mean(fast.map(({ left }) => left))).toBeLessThan(0.2 * mean(fast.map(({ skew }) => skew)));
    const within = fast.filter(({ left, stated }) => left < 3 * stated);
    expect(within.length).toBeGreaterThan(0.97 * fast.length);
  });

  it("L8 widens the error where nobody knows how the camera reads, and moves nothing", () => {
    const { shaft, truth } = drawn("down", 12);
    const told = tracked(undoRollingShutter(shaft, rate, { ...size, shutter: null }));
    expect(told.angle).toBe(shaft.angle);
    expect(off(told.angle, truth)).toBeLessThan(2 * (told.sd / degree));
    const still = { ...shaft, angularRate: radiansPerSecond(0) };
    expect(tracked(undoRollingShutter(still, { x: 0, y: 0 }, { ...size, shutter: null })).sd).toBe(sd);
  });

  it("L8 widens the error where no end tells how far the shaft reaches, and leaves pictures alone that are read at once", () => {
    const { shaft } = drawn("down", 15);
    const shutter = { time: milliseconds(15), towards: "down" } as const;
    const headless: Tracked = { ...shaft, head: null, headSd: null };
    const told = tracked(undoRollingShutter(headless, rate, { ...size, shutter }));
    expect(told.angle).toBe(shaft.angle);
    expect(told.sd / degree).toBeGreaterThan(1);
    expect(undoRollingShutter(shaft, rate, { ...size, shutter: readAtOnce })).toBe(shaft);
  });

  it("L8 takes a hand that was seen once to stand", () => {
    const { shaft } = drawn("down", 15);
    expect(gripRate([shaft])).toStrictEqual({ x: 0, y: 0 });
    const later = { ...shaft, t: milliseconds(40), grip: imagePoint(shaft.grip.x + 8, shaft.grip.y - 4) };
    expect(gripRate([shaft, later]).x).toBeCloseTo(200, 6);
    expect(gripRate([shaft, later]).y).toBeCloseTo(-100, 6);
  });
});
