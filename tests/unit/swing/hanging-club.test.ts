import { describe, expect, it } from "vitest";
import {
  evenPlaces,
  slowTempo,
  usualGolfer,
  type DemoPlanItem,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { FinishedRep } from "@overcue/client-capture/swing/finish-rep";
import { runSwingClock, startSwingClock } from "@overcue/client-capture/swing/swing-clock";
import type { SwingSample } from "@overcue/client-capture/swing/swing-sample";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { heldRep, timeOf } from "../../fakes/clock-run.ts";
import { noNoise, trueSamples } from "../../fakes/true-samples.ts";
import { seededRandom } from "../../scenes/random.ts";

const motionOf = (item: DemoPlanItem): DemoMotion =>
  demoMotion({
    golfer: usualGolfer,
    club: true,
    ball: true,
    items: [{ do: "still", seconds: 1.5 }, item, { do: "still", seconds: 1.5 }],
  });

function repOf(motion: DemoMotion, spoil: (sample: SwingSample) => SwingSample): FinishedRep | undefined {
  let state = startSwingClock(gripToHead(usualGolfer.station));
  for (const sample of trueSamples(motion, 60, noNoise, seededRandom(1))) {
    const ran = runSwingClock(state, spoil(sample));
    state = ran.state;
    if (ran.output.finished !== null) return ran.output.finished;
  }
  return undefined;
}

/** The lift hardly knows how far a hanging club leans along the line of sight: within a second it says anything up to so many radians. */
const swaying =
  (most: number) =>
  (sample: SwingSample): SwingSample => {
    if (sample.shaft === null || sample.shaft.toHead.z > -0.6) return sample;
    const { x, y, z } = sample.shaft.toHead;
    const by = most * Math.sin(sample.t / 150);
    const toHead = { x: x * Math.cos(by) + z * Math.sin(by), y, z: z * Math.cos(by) - x * Math.sin(by) };
    const covariance = sample.shaft.covariance.map((value, place) =>
      place === 18 || place === 24 ? most ** 2 : value,
    );
    return { ...sample, shaft: { ...sample.shaft, toHead, covariance } };
  };

describe("a hanging club in the picture", () => {
  it("K2.8 the setting off is seen in the picture, however the lean of the hanging club sways", () => {
    const motion = motionOf({ do: "rep", kind: "rehearsal", places: evenPlaces, tempo: slowTempo });
    const address = repOf(motion, swaying(0.3))?.checkpoints.find(({ checkpoint }) => checkpoint === "address");
    const off = Math.abs((address?.t ?? Number.NaN) - timeOf(motion, "address"));
    expect(off).toBeLessThan(300);
    expect(off).toBeLessThan(2 * (address?.sd ?? 0));
  });

  it("K2.9 a club held at takeaway has set off before, from the ball", () => {
    const motion = motionOf(heldRep("takeaway", 1.5));
    const address = repOf(motion, swaying(0.1))?.checkpoints.find(({ checkpoint }) => checkpoint === "address");
    const off = Math.abs((address?.t ?? Number.NaN) - timeOf(motion, "address"));
    expect(off).toBeLessThan(400);
    expect(off).toBeLessThan(2 * (address?.sd ?? 0));
  });

  it("K2.9 a club held forward of the ball was not at address, though it lay at the ball before", () => {
    const motion = motionOf({ do: "rep", kind: "flow", places: evenPlaces, tempo: slowTempo });
    const rep = repOf(motion, swaying(0.3));
    expect(rep?.kind).toBe("flow");
    expect(rep?.checkpoints.map(({ checkpoint }) => checkpoint)).not.toContain("address");
  });

  it.each(["rehearsal", "flow"] as const)(
    "K2.10 impact of a %s is seen in the picture too, however the lean sways",
    (kind) => {
      const motion = motionOf({ do: "rep", kind, places: evenPlaces, tempo: slowTempo });
      const impact = repOf(motion, swaying(0.3))?.checkpoints.find(({ checkpoint }) => checkpoint === "impact");
      const off = Math.abs((impact?.t ?? Number.NaN) - timeOf(motion, "impact"));
      expect(off).toBeLessThan(60);
      expect(off).toBeLessThan(2 * (impact?.sd ?? 0));
      expect(impact?.sd).toBeLessThan(60);
    },
  );
});
