import { describeShaft } from "@overcue/client-capture/shaft/describe-shaft";
import type { FittedCandidate } from "@overcue/client-capture/shaft/fit-candidate";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";

const torso = 100;
const reading = { angle: 0.9, rate: 0, mass: 0.95, spread: 0.02, absent: 0, opposite: 0 };

/** What is said of one line from the hands, `length` torso lengths long, where the shaft can look `longest` long at most. */
function say(length: number, evidence: number, longest: number, other: Partial<FittedCandidate> = {}): ShaftInImage {
  return sayOf([lineOf(length, evidence, other)], longest);
}

function lineOf(length: number, evidence: number, other: Partial<FittedCandidate>): FittedCandidate {
  return {
    x: 150,
    y: 200,
    angle: 0.9,
    sweepAngle: 0.9,
    angleSd: 0.004,
    acrossSd: 1,
    end: length * torso,
    evidence,
    novelty: 1,
    rodSeen: false,
    headHidden: false,
    endHidden: false,
    plainEnd: null,
    onLimb: 0,
    fitted: true,
    turned: 0,
    ...other,
  };
}

function sayOf(candidates: readonly FittedCandidate[], longest: number): ShaftInImage {
  const hands = { x: 150, y: 200, torso, seen: 0.9, inside: true, high: 0, low: 0, rests: 0 };
  return describeShaft({ t: milliseconds(0), hands, candidates, long: 1, longest }, reading, shaftTuning);
}

test("T25 a line longer than the shaft can have grown is taken for it only where it is the better seen", () => {
  expect(say(1.2, 8, 1.3).status).toBe("tracked");
  expect(say(1.7, 8, 1.3)).toMatchObject({ status: "lost", reason: "end-on" });
  expect(say(1.7, 25, 1.3).status).toBe("tracked");
  expect(say(2.6, 25, 1.3)).toMatchObject({ status: "lost", reason: "end-on" });
});

test("T25 less than a hand's breadth of line is no shaft, however well it is seen", () => {
  expect(say(0.3, 30, Infinity)).toMatchObject({ status: "lost", reason: "end-on" });
});

test("T25 a stub that nothing ends is no shaft; one that is seen by the rod's end is", () => {
  const stub = { headHidden: true, endHidden: true };
  expect(say(0.7, 30, Infinity, stub)).toMatchObject({ status: "lost", reason: "end-on" });
  expect(say(1.2, 30, Infinity, stub).status).toBe("tracked");
  expect(say(0.7, 30, Infinity, { ...stub, endHidden: false })).toMatchObject({ status: "tracked", head: null });
});

test("T39 a line along an arm that is hardly longer than a forearm is a forearm, a longer one may be the shaft before it", () => {
  expect(say(0.7, 30, Infinity, { onLimb: 0.9 })).toMatchObject({ status: "lost", reason: "end-on" });
  expect(say(0.7, 30, Infinity, { onLimb: 0.2 }).status).toBe("tracked");
  expect(say(1.5, 30, Infinity, { onLimb: 0.9 }).status).toBe("tracked");
});

test("T46 a line that the fit does not bear out is not told", () => {
  expect(say(1.5, 30, Infinity).status).toBe("tracked");
  expect(say(1.5, 30, Infinity, { fitted: false }).status).not.toBe("tracked");
});

test("T50 a line as far from the odds' direction as a peak speaks for its neighbours is the one that they mean, one farther off is not", () => {
  const spoken = (shaftTuning.peakReach * Math.PI) / 180;
  expect(say(1.5, 30, Infinity, { sweepAngle: 0.9 + spoken }).status).toBe("tracked");
  expect(say(1.5, 30, Infinity, { sweepAngle: 0.9 - spoken }).status).toBe("tracked");
  expect(say(1.5, 30, Infinity, { sweepAngle: 0.9 + 2 * spoken }).status).not.toBe("tracked");
});

test("T51 of two lines where the odds are, the one is told of which more is new", () => {
  const stick = lineOf(1.5, 20, { angle: 0.95, novelty: 0.3 });
  const shaft = lineOf(1.5, 14, { angle: 0.86, novelty: 0.9 });
  expect(sayOf([stick, shaft], Infinity)).toMatchObject({ status: "tracked", angle: 0.86 });
  expect(sayOf([stick, { ...shaft, novelty: 0.3 }], Infinity)).toMatchObject({ status: "tracked", angle: 0.95 });
});

test("T56 a fit that strays from where it was looked for states what it strays beyond a look's width", () => {
  const sdOf = (strayed: number): number => {
    const told = say(1.2, 20, Infinity, { sweepAngle: 0.9 + (strayed * Math.PI) / 180 });
    if (told.status !== "tracked") throw new Error("not tracked");
    return (told.sd * 180) / Math.PI;
  };
  expect(sdOf(1.4)).toBe(sdOf(0));
  expect(sdOf(-1.4)).toBe(sdOf(0));
  expect(sdOf(4)).toBeCloseTo(Math.hypot(sdOf(0), 2.5), 6);
  expect(sdOf(-4)).toBeCloseTo(sdOf(4), 6);
});
