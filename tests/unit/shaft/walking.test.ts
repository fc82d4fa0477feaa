import type { Body } from "@overcue/client-capture/pipeline/body";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { smoothShaft } from "@overcue/client-capture/shaft/smooth-shaft";
import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { isWalking, makeBodyPlaces, placeBody } from "@overcue/client-capture/shaft/walking";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";
import { drawBody, drawPicture, seeded } from "./draw-picture.ts";

const torso = 75;
const step = 66;

/** In which of the poses, fifteen a second, a body is said to walk; `hips`, `feet` and the camera's `sway`: how far each has gone by then, torso lengths. */
function walked(
  poses: number,
  hips: (pose: number) => number,
  feet: (pose: number) => number,
  sway = 0,
): readonly number[] {
  const places = makeBodyPlaces();
  return Array.from({ length: poses }, (_, pose) => pose).filter((pose) => {
    const body = drawBody(pose * step, 150, 200, torso);
    const landmarks = body.landmarks.map((each, index): Body["landmarks"][number] => {
      const went = index >= 23 && index <= 24 ? hips(pose) : index >= 27 && index <= 28 ? feet(pose) : 0;
      return { ...each, x: each.x + torso * (went + sway * pose) };
    });
    placeBody(places, { ...body, landmarks }, torso * sway * pose, 0);
    return isWalking(places, torso, shaftTuning);
  });
}

const still = (): number => 0;

test("T58 who goes on, hips and feet, walks until a little after standing still", () => {
  const goes = (pose: number): number => 0.15 * Math.max(0, Math.min(pose, 30) - 10);
  const found = walked(60, goes, goes);
  expect(found[0]).toBeLessThanOrEqual(14);
  expect(found).toEqual(Array.from({ length: found.length }, (_, n) => (found[0] ?? 0) + n));
  expect(found.at(-1)).toBeGreaterThanOrEqual(30);
  expect(found.at(-1)).toBeLessThan(30 + 600 / step);
});

test("T58 hips that swing over feet that stay do not walk, nor does a foot that rolls over at the finish", () => {
  expect(walked(60, (pose) => 0.35 * Math.sin(pose / 3), still)).toEqual([]);
  expect(
    walked(
      60,
      (pose) => 0.05 * Math.min(pose, 8),
      (pose) => 0.02 * Math.min(pose, 8),
    ),
  ).toEqual([]);
});

test("T58 feet that the pose model guesses here and there do not make hips walk that stay", () => {
  const random = seeded(3);
  expect(walked(200, still, () => 2 * random())).toEqual([]);
});

test("T58 a pose that is misjudged is an error of its own picture, and of none after it", () => {
  const jumps = (pose: number): number => (pose === 20 ? 3 : 0);
  expect(walked(60, jumps, jumps)).toEqual([20]);
});

test("T58 a picture that sways moves nobody, and neither does a sway that is only seen in it", () => {
  expect(walked(60, still, still, 0.1)).toEqual([]);
  const places = makeBodyPlaces();
  const found = Array.from({ length: 30 }, (_, pose) => {
    placeBody(places, drawBody(pose * step, 150, 200, torso), 0.1 * torso * pose, 0);
    return isWalking(places, torso, shaftTuning);
  });
  expect(found).not.toContain(true);
});

test("T58 the full pass over pictures in which nothing was looked for says why of each, as the first pass did", () => {
  const state = startShaftTracker({ handed: "right", keepEvidence: milliseconds(Infinity) });
  const random = seeded(5);
  for (let i = 0; i < 40; i++) {
    const picture = drawPicture(300, 400, 90, [], 4, random);
    trackShaft(state, { picture, t: milliseconds(i * 33), body: drawBody(i * 33, 50 + 5 * i, 257, torso) });
  }
  const walkedIn = state.evidence.slice(-20);
  expect(walkedIn.map(({ whyNot }) => whyNot)).toEqual(walkedIn.map(() => "walking"));
  expect(smoothShaft(walkedIn)).toEqual(walkedIn.map(({ t }) => ({ status: "lost", t, reason: "walking" })));
});

test("T58 a line on the ground that hands are carried past is not taken for a shaft, and the golfer who stands still with a club is found again", () => {
  const random = seeded(5);
  let state = startShaftTracker({ handed: "right" });
  const track = (t: number, x: number, lineFrom: number) => {
    const line = { x: lineFrom, y: 260, angle: -0.3, length: 150, width: 2.2, level: 190 };
    const picture = drawPicture(500, 400, 90, [line], 4, random);
    const { state: next, output } = trackShaft(state, {
      picture,
      t: milliseconds(t),
      body: drawBody(t, x, 257, torso),
    });
    state = next;
    return output.now;
  };
  // The line stands at 160 while the hands go by it, then begins in them where they rest.
  const going = Array.from({ length: 40 }, (_, i) => track(i * 33, 90 + 5 * i, 160));
  const after = going.slice(12);
  expect(after.map((now) => now.status === "lost" && now.reason)).toEqual(after.map(() => "walking"));
  const standing = Array.from({ length: 60 }, (_, i) => track(1320 + i * 33, 285, 297));
  expect(standing.at(-1)?.status).toBe("tracked");
});
