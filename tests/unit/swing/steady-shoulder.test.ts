import { describe, expect, it } from "vitest";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { evenPlaces, tourTempo, usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { followSwing, startUnrolling, type FollowedSample } from "@overcue/client-capture/swing/follow-swing";
import { steadyShoulder } from "@overcue/client-capture/swing/steady-shoulder";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { timeOf } from "../../fakes/clock-run.ts";
import { noNoise, trueSamples } from "../../fakes/true-samples.ts";
import { seededRandom } from "../../scenes/random.ts";

const rep = { do: "rep", kind: "full", places: evenPlaces, tempo: tourTempo } as const;
const motion = demoMotion({ golfer: usualGolfer, club: true, ball: true, items: [{ do: "still", seconds: 1 }, rep] });
const at = (id: CheckpointId): number => timeOf(motion, id);
const back = { from: at("address"), to: at("top") };
const level = at("arm-level-back");
const truth = motion.at(level / 1000).body.leadShoulder.z;

/** The rep's samples at 60 pictures a second, the shoulder too high by `off` metres at each time. */
function samplesOff(off: (t: number) => number): FollowedSample[] {
  let state = startUnrolling;
  return Array.from(trueSamples(motion, 60, noNoise, seededRandom(1)), (sample) => {
    const shoulder = sample.leadShoulderZ;
    const leadShoulderZ = shoulder && { ...shoulder, value: shoulder.value + off(sample.t) };
    const followed = followSwing(state, { ...sample, leadShoulderZ });
    state = followed.state;
    return followed.output;
  });
}

describe("the lead shoulder, steadied", () => {
  it("K2.6 lies within a centimetre of the true one where the answers are right", () => {
    expect(
      Math.abs(
        (steadyShoulder(
          samplesOff(() => 0),
          back,
        )(level)?.value ?? 0) - truth,
      ),
    ).toBeLessThan(0.01);
  });

  it("K2.6 has less than two thirds of an error that changes within the way back", () => {
    const period = (back.to - back.from) / 2;
    const wandering = samplesOff((t) => 0.04 * Math.cos((2 * Math.PI * (t - level)) / period));
    expect(Math.abs((steadyShoulder(wandering, back)(level)?.value ?? 0) - truth)).toBeLessThan((0.04 * 2) / 3);
  });

  it("K2.6 is not known without answers nearby", () => {
    const unseen = samplesOff(() => 0).map((sample) => ({ ...sample, leadShoulderZ: null }));
    expect(steadyShoulder(unseen, back)(level)).toBeNull();
  });
});
