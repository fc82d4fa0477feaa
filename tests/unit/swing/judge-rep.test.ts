import { expect, it } from "vitest";
import { kindOfRep, refuseRep } from "@overcue/client-capture/swing/judge-rep";
import type { FollowedSample } from "@overcue/client-capture/swing/follow-swing";
import type { RepSamples } from "@overcue/client-capture/swing/rep-samples";
import type { Segment } from "@overcue/client-capture/swing/segment-reps";
import { worldPoint } from "@overcue/shared-geometry/point";
import { milliseconds, radians } from "@overcue/shared-geometry/units";

const degree = Math.PI / 180;

/** A movement from 0 to 1500 ms whose swing angle was highest, `peak` degrees, at 1000; `forward`: how far forward of the ball it was before, degrees. */
const segmentTo = (peak: number, forward: number): Segment => ({
  leftLowAt: 0,
  tops: [{ t: 1000, angle: peak * degree, sd: 0 }],
  turns: [],
  passedLowAt: 1400,
  wayDown: 400,
  stood: 0,
  endedAt: 1500,
  forwardBefore: { t: -200, angle: forward * degree, sd: 0 },
  after: -Infinity,
});

/** The club going back to 130 degrees with the hands, which rise by half a metre or by `rise`, out of a rest with the club at `angle` degrees. */
function repFrom(angle: number, atBall: boolean, rise = 0.5): RepSamples {
  const rest = { from: -1000, to: 0, angle: angle * degree, hands: { x: 0, y: -0.5, z: 0.8 } };
  const samples = Array.from({ length: 31 }, (_, n): FollowedSample => {
    const t = milliseconds(n * 50);
    const way = Math.sin((Math.PI * n) / 30);
    const z = 0.8 + rise * way;
    const shaft = { t, grip: worldPoint(-0.2, -0.5, z), toHead: { x: -1, y: 0, z: 0 }, covariance: [] };
    return {
      ...{ t, shaft, alone: null, tracked: true, hands: null, leadShoulderZ: null, trailThighX: null },
      ...{ inPicture: null, feet: null, hanging: shaft, angle: radians(130 * way * degree), angleSd: 0.05 },
    };
  });
  return { samples, rest, address: atBall ? rest : null, setOffAt: 0, setOffSd: 50 };
}

it("K3.2 a club that stood leant far back and is only picked up a little is no rep", () => {
  expect(refuseRep(repFrom(48, true), segmentTo(101, 0))).toBe("too-short");
  expect(refuseRep(repFrom(5, true), segmentTo(101, 0))).toBeNull();
});

it("K3.2 a movement at whose top the hands are lower than where they rested is no rep: a ball is teed up", () => {
  expect(refuseRep(repFrom(5, true, -0.5), segmentTo(150, 0))).toBe("hands-sank");
  expect(refuseRep(repFrom(5, true, 0.1), segmentTo(150, 0))).toBeNull();
  // Out of a flow the hands come from a high follow-through.
  expect(refuseRep({ ...repFrom(5, false, -0.5), rest: null }, segmentTo(150, -60))).toBeNull();
});

it("K3.2 a club that was seen up nowhere, but goes out of sight low and is supposed to go on up, made no rep", () => {
  const { samples, ...rep } = repFrom(5, true);
  const outOfSight = samples.map((sample) => ({ ...sample, tracked: (sample.angle ?? 0) < 80 * degree }));
  expect(refuseRep({ ...rep, samples: outOfSight }, segmentTo(130, 0))).toBe("club-lost");
  expect(refuseRep({ ...rep, samples }, segmentTo(130, 0))).toBeNull();
});

it("K3.3 a club that rested forward of the ball makes a flow, though it was not seen to turn round there", () => {
  expect(kindOfRep(repFrom(-52, false), segmentTo(250, 8), 0.65)).toBe("flow");
  expect(kindOfRep(repFrom(2, true), segmentTo(250, 8), 0.65)).toBe("rehearsal");
  expect(kindOfRep(repFrom(2, true), segmentTo(250, 8), 0.35)).toBe("full");
  expect(kindOfRep(repFrom(-52, false), segmentTo(150, 8), 0.35)).toBe("half");
});
