import { borrowFromRod } from "@overcue/client-capture/shaft/borrow-from-rod";
import { makeLineSweep, type LineSweep } from "@overcue/client-capture/shaft/line-sweep-state";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { expect, test } from "vitest";

const torso = 90;
const first = 30;

interface Side {
  readonly evidence: number;
  /** Torso lengths. */
  readonly end: number;
}

/** A sweep in which one line shows something, on both sides of the hands. */
function twoSides(near: Side, far: Side): { readonly sweep: LineSweep; readonly other: number } {
  const sweep = makeLineSweep(100, shaftTuning);
  sweep.evidence.fill(-5);
  const other = first + sweep.directions / 2;
  sweep.evidence[first] = near.evidence;
  sweep.evidence[other] = far.evidence;
  sweep.end[first] = near.end * torso;
  sweep.end[other] = far.end * torso;
  borrowFromRod(sweep, torso, shaftTuning);
  return { sweep, other };
}

test("T23 either end of the rod speaks for the other, the longer and clearer one for the head", () => {
  const { sweep, other } = twoSides({ evidence: 20, end: 1.6 }, { evidence: 6, end: 0.9 });
  expect(sweep.evidence[other]).toBe(20);
  expect(sweep.borrowed[other]).toBe(1);
  expect(sweep.side[first]).toBeGreaterThan(0);
  expect(sweep.side[other]).toBe(-(sweep.side[first] as number));
});

test("T35 what is longer than a rod can look out of the butt is the head's side the more surely", () => {
  const rodLong = twoSides({ evidence: 40, end: shaftTuning.rodLongest - 0.1 }, { evidence: 5, end: 0.9 });
  const longer = twoSides({ evidence: 40, end: shaftTuning.rodLongest + 0.1 }, { evidence: 5, end: 0.9 });
  expect(longer.sweep.side[first]).toBeGreaterThan(rodLong.sweep.side[first] as number);
});

test("T35 what is longer than a rod on both sides of the hands is a rope, and no club", () => {
  const long = shaftTuning.rodLongest + 0.3;
  const rope = twoSides({ evidence: 25, end: long }, { evidence: 22, end: long });
  expect(rope.sweep.evidence[first]).toBeLessThan(shaftTuning.leastEvidence);
  expect(rope.sweep.evidence[rope.other]).toBeLessThan(shaftTuning.leastEvidence);
  const club = twoSides({ evidence: 25, end: long }, { evidence: 22, end: 1.2 });
  expect(club.sweep.evidence[first]).toBe(25);
});

test("T23 of a rod seen short the longer end tells little: it may only be the nearer one, or the body hides the other", () => {
  const short = twoSides({ evidence: 30, end: shaftTuning.sideLong - 0.1 }, { evidence: 0, end: 0.4 });
  const long = twoSides({ evidence: 30, end: shaftTuning.sideLong + 0.1 }, { evidence: 0, end: 0.4 });
  expect(short.sweep.side[first]).toBeGreaterThan(0);
  expect(long.sweep.side[first]).toBeGreaterThan(3 * (short.sweep.side[first] as number));
});
