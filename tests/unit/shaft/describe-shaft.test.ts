import { describeShaft } from "@overcue/client-capture/shaft/describe-shaft";
import type { FittedCandidate } from "@overcue/client-capture/shaft/fit-candidate";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";

const torso = 100;
const reading = { angle: 0.9, rate: 0, mass: 0.95, spread: 0.02, absent: 0, opposite: 0 };

/** What is said of one line from the hands, `length` torso lengths long, where the shaft can look `longest` long at most and `onLimb` of it lies on an arm. */
function say(length: number, evidence: number, longest: number, onLimb = 0): ShaftInImage {
  const line: FittedCandidate = {
    x: 150,
    y: 200,
    angle: 0.9,
    sweepAngle: 0.9,
    angleSd: 0.004,
    acrossSd: 1,
    end: length * torso,
    evidence,
    rodSeen: false,
    headHidden: false,
    onLimb,
    fitted: true,
  };
  const hands = { x: 150, y: 200, torso, seen: 0.9, inside: true, high: 0, low: 0 };
  return describeShaft({ t: milliseconds(0), hands, candidates: [line], long: 1, longest }, reading, shaftTuning);
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

test("T39 a line along an arm that is hardly longer than a forearm is a forearm, a longer one may be the shaft before it", () => {
  expect(say(0.7, 30, Infinity, 0.9)).toMatchObject({ status: "lost", reason: "end-on" });
  expect(say(0.7, 30, Infinity, 0.2).status).toBe("tracked");
  expect(say(1.5, 30, Infinity, 0.9).status).toBe("tracked");
});
