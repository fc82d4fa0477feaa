import { doubtHands } from "@overcue/client-capture/shaft/doubt-hands";
import { startHandsTrack, type HandsTrack } from "@overcue/client-capture/shaft/hands-track";
import { makeLineSweep, type LineSweep } from "@overcue/client-capture/shaft/line-sweep-state";
import { predictHands } from "@overcue/client-capture/shaft/predict-hands";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";
import { drawBody } from "./draw-picture.ts";

const torso = 90;
const first = 30;

/** Hands that one pose saw so well, and `later` milliseconds after it. */
function handsOf(later: number): HandsTrack {
  const track = startHandsTrack();
  predictHands(track, milliseconds(later), drawBody(0, 150, 200, torso), shaftTuning);
  return track;
}

/** A line that shows 18 nats on one side of the hands and `other` on the other side, `apart` working pixels beside it. */
function doubted(other: number, apart: number, hands: HandsTrack): LineSweep {
  const sweep = makeLineSweep(100, shaftTuning);
  sweep.evidence.fill(-5);
  sweep.evidence[first] = 18;
  sweep.end[first] = 1.2 * torso;
  sweep.evidence[first + sweep.directions / 2] = other;
  sweep.offset[first + sweep.directions / 2] = apart;
  doubtHands(sweep, torso, hands, shaftTuning);
  return sweep;
}

test("T37 a moving line on both sides of the hands speaks for both, for the longer side the more", () => {
  const sweep = doubted(9, 1, handsOf(0));
  const opposite = first + sweep.directions / 2;
  expect(sweep.evidence[opposite]).toBe(18);
  expect(sweep.borrowed[opposite]).toBe(1);
  expect(sweep.side[first]).toBeGreaterThan(1);
  expect(sweep.side[opposite]).toBe(-(sweep.side[first] as number));
});

test("T37 the worse the hands are known the less that tells", () => {
  const near = doubted(9, 1, handsOf(0)).side[first] as number;
  const late = doubted(9, 1, handsOf(200)).side[first] as number;
  expect(late).toBeLessThan(0.8 * near);
});

test("T37 a line on one side only, and two that lie beside each other, keep what they have", () => {
  for (const sweep of [doubted(2, 0, handsOf(0)), doubted(9, 0.2 * torso, handsOf(0))]) {
    const opposite = first + sweep.directions / 2;
    expect(sweep.evidence[opposite]).toBeLessThan(18);
    expect(sweep.borrowed[opposite]).toBe(0);
    expect(sweep.side[first]).toBe(0);
  }
});

test("T44 what is longer on both sides of the hands together than any club is none on either", () => {
  const opposite = first + makeLineSweep(100, shaftTuning).directions / 2;
  const across = (length: number): LineSweep => {
    const sweep = makeLineSweep(100, shaftTuning);
    sweep.evidence.fill(-5);
    sweep.evidence[first] = 18;
    sweep.end[first] = 1.2 * torso;
    sweep.evidence[opposite] = 9;
    sweep.end[opposite] = length * torso - 1.2 * torso;
    doubtHands(sweep, torso, handsOf(0), shaftTuning);
    return sweep;
  };
  const club = across(2.4);
  expect([club.evidence[first], club.evidence[opposite]]).toEqual([18, 18]);
  const post = across(3.2);
  expect(post.evidence[first]).toBeLessThan(10);
  expect(post.evidence[opposite]).toBeLessThan(0);
  expect(post.side[first]).toBe(0);
});
