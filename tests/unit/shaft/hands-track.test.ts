import { correctHands } from "@overcue/client-capture/shaft/correct-hands";
import { handsSd, handsSdAcross, startHandsTrack } from "@overcue/client-capture/shaft/hands-track";
import { predictHands } from "@overcue/client-capture/shaft/predict-hands";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";
import { drawBody } from "./draw-picture.ts";

const torso = 100;

interface Course {
  /** Where the hands truly are, picture pixels, `seconds` after the start. */
  readonly at: (seconds: number) => { readonly x: number; readonly y: number };
  /** What every pose adds, picture pixels. */
  readonly off?: { readonly x: number; readonly y: number };
  /** How well the poses see the hands, 0 to 1. */
  readonly seen?: number;
  /** The shaft's direction and turning rate, radians; null: it is never found. */
  readonly shaft?: ((seconds: number) => number) | null;
  readonly until: number;
}

/** Poses of every third picture, two pictures late; how far the hands are predicted from the truth in each, as a torso's share, before the line is seen. */
function follow({ at, off = { x: 0, y: 0 }, seen: visibility = 0.9, shaft = null, until }: Course) {
  const track = startHandsTrack();
  const errors: number[] = [];
  const step = 1 / 60;
  for (let i = 0; i * step < until; i++) {
    const t = i * step;
    const pose = Math.max(0, i - 2 - ((i + 1) % 3)) * step;
    const seen = at(pose);
    const body = drawBody(1000 * pose, seen.x + off.x, seen.y + off.y, torso, visibility);
    expect(predictHands(track, milliseconds(1000 * t), body, shaftTuning)).toBe(true);
    const truth = at(t);
    errors.push(Math.hypot(track.now.x - truth.x, track.now.y - truth.y) / torso);
    if (shaft !== null) {
      const rate = (shaft(t + step / 2) - shaft(t - step / 2)) / step;
      correctHands(track, shaft(t), truth.x, truth.y, rate, shaftTuning);
    }
  }
  return { track, errors, last: errors.at(-1) ?? Number.NaN };
}

const still = (): { x: number; y: number } => ({ x: 150, y: 200 });

test("T30 without a pose nobody knows where the hands are", () => {
  expect(predictHands(startHandsTrack(), milliseconds(0), null, shaftTuning)).toBe(false);
});

test("T30 late poses of hands that go evenly are carried on to now", () => {
  const { last } = follow({ at: (t) => ({ x: 150 + 60 * t, y: 200 - 40 * t }), until: 1 });
  expect(last).toBeLessThan(0.03);
});

test("T30 however many poses are seen, hands are known no better than their common error", () => {
  const { track } = follow({ at: still, until: 3 });
  expect(handsSd(track)).toBeGreaterThan(0.9 * shaftTuning.offsetSd);
});

test("T30 hands that go fast are known worse than hands that rest", () => {
  // The last picture's newest pose is of four pictures before.
  const rest = follow({ at: still, until: 0.98 });
  const fast = follow({ at: (t) => ({ x: 150 + 60 * Math.sin(12 * t), y: 200 }), until: 0.98 });
  expect(handsSd(fast.track)).toBeGreaterThan(1.3 * handsSd(rest.track));
});

test("T31 the shaft's line tells what a pose gets wrong across it, and it is remembered", () => {
  const course: Course = { at: still, off: { x: 15, y: 0 }, shaft: () => Math.PI / 2, until: 1 };
  const { track, last } = follow(course);
  expect(last).toBeLessThan(0.02);
  expect(handsSdAcross(track, Math.PI / 2)).toBeLessThan(0.3 * handsSdAcross(track, 0));
});

test("T31 hands that speed up with a turning shaft are followed by its line where poses alone fall behind", () => {
  // A quarter of a circle about the shoulders within 150 ms, from rest.
  const turn = (t: number): number => Math.max(0, t - 0.5) ** 2 * 70;
  const at = (t: number) => ({ x: 150 + 80 * Math.sin(turn(t)), y: 140 + 80 * Math.cos(turn(t)) });
  const alone = follow({ at, until: 0.66 });
  const withShaft = follow({ at, shaft: (t) => turn(t) + 1, until: 0.66 });
  expect(Math.max(...alone.errors)).toBeGreaterThan(0.4);
  expect(Math.max(...withShaft.errors)).toBeLessThan(0.6 * Math.max(...alone.errors));
});

test("T31 a pose that comes late is taken in at its own time, not as if it were of now", () => {
  const { errors } = follow({ at: (t) => ({ x: 100 + 200 * t, y: 200 }), shaft: () => Math.PI / 2, until: 0.6 });
  expect(Math.max(...errors.slice(20))).toBeLessThan(0.02);
});

test("T32 hands are never predicted farther from the shoulders than arms reach", () => {
  const track = startHandsTrack();
  const shoulders = { x: 100, y: 90 };
  for (let i = 0; i < 30; i++) {
    const body = drawBody(Math.min(i, 6) * 33, 150 + 15 * Math.min(i, 6), 200, torso);
    predictHands(track, milliseconds(33 * i), body, shaftTuning);
    const middle = { x: shoulders.x + 15 * Math.min(i, 6), y: shoulders.y };
    expect(Math.hypot(track.now.x - middle.x, track.now.y - middle.y)).toBeLessThan(
      1.01 * shaftTuning.armReach * torso,
    );
  }
});

test("T33 the shaft's line may move the hands farther from poses that hardly saw them", () => {
  const course: Course = { at: still, off: { x: 40, y: 0 }, shaft: () => Math.PI / 2, until: 1 };
  expect(follow(course).last).toBeGreaterThan(0.1);
  expect(follow({ ...course, seen: 0.4 }).last).toBeLessThan(0.03);
});

test("T33 hands that the poses hardly saw are known worse", () => {
  const clear = follow({ at: still, until: 0.2 });
  const hidden = follow({ at: still, seen: 0.2, until: 0.2 });
  expect(handsSd(hidden.track)).toBeGreaterThan(1.1 * handsSd(clear.track));
});
