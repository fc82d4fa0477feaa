import { expect, it } from "vitest";
import type { CheckpointTime } from "@overcue/client-capture/swing/checkpoint-time";
import type { FollowedSample } from "@overcue/client-capture/swing/follow-swing";
import { isFinish } from "@overcue/client-capture/swing/is-finish";
import type { RepSamples } from "@overcue/client-capture/swing/rep-samples";
import { worldPoint } from "@overcue/shared-geometry/point";
import { milliseconds } from "@overcue/shared-geometry/units";

/** A club that hangs for a second from hands so many metres high, under a lead shoulder at 1.4 m. */
function hanging(handsZ: number): RepSamples {
  const samples = Array.from({ length: 61 }, (_, n): FollowedSample => {
    const t = milliseconds((n * 1000) / 60);
    const shaft = { t, grip: worldPoint(-0.4, 0.9, handsZ), toHead: { x: 0, y: 0, z: -1 }, covariance: [] };
    return {
      ...{ t, shaft, alone: null, tracked: true, hands: null, trailThighX: null, inPicture: null, feet: null },
      ...{ leadShoulderZ: { value: 1.4, sd: 0.03 }, hanging: shaft, angle: null, angleSd: 0.05 },
    };
  });
  return { samples, rest: null, address: null, setOffAt: 0, setOffSd: 50 };
}

const throughLow = {
  ...{ leftLowAt: 0, tops: [{ t: 300, angle: 3, sd: 0 }], turns: [], passedLowAt: 500, wayDown: 200, endedAt: 1000 },
  ...{ stood: 0, forwardBefore: null, after: -Infinity },
};
const dated = (...ids: CheckpointTime["checkpoint"][]): CheckpointTime[] =>
  ids.map((checkpoint, n) => ({ checkpoint, t: milliseconds(300 + 50 * n), sd: 10 }));

it("K3.2 a club that comes through the low with the hands about the shoulders hangs over them: a finish, and no rep", () => {
  expect(isFinish(hanging(1.6), throughLow, dated("top", "impact"))).toBe(true);
  expect(isFinish(hanging(0.8), throughLow, dated("top", "impact"))).toBe(false);
});

it("K3.2 one that was level on its way is a rep all the same, for fast hands are shown where they were", () => {
  expect(isFinish(hanging(1.6), throughLow, dated("top", "shaft-level-down", "impact"))).toBe(false);
  expect(isFinish(hanging(1.6), throughLow, dated("shaft-level-back", "top", "impact"))).toBe(false);
});
