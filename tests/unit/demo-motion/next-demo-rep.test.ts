import { describe, expect, it } from "vitest";
import { placesOf } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { nextDemoRep, type PupilsPractice } from "@overcue/client-capture/demo-motion/next-demo-rep";
import { stageIds, type Aim } from "@overcue/shared-geometry/wire/practice";

const habit = placesOf(1);
const pupil = { habit, carryOver: 0.5 };

const aimAt = (checkpoint: Aim["checkpoint"], from: number, to: number): Aim => ({
  checkpoint,
  wanted: { from: -0.05, to: 0.05 },
  felt: { from, to },
  wantedBand: "ball-line",
  feltBand: "heel-line",
  exaggerateBy: 0.4,
  cap: 0.8,
  baseline: null,
  carryOver: null,
  reason: "",
});

const underCue = (from: number, to: number): PupilsPractice => ({
  mode: "practice",
  stage: "slow-rehearsal",
  aims: [aimAt("arm-level-back", from, to)],
});

describe("the practising demo golfer", () => {
  it.each([
    ["without a book", null],
    ["in a baseline", { ...underCue(0.3, 0.5), mode: "baseline" } as const],
    ["in a test without feedback", { ...underCue(0.3, 0.5), mode: "retention-test" } as const],
  ])("D22 swings by habit %s", (_, practice) => {
    expect(nextDemoRep(pupil, practice).places).toEqual(habit);
  });

  it("D22 goes the set share of the way to the middle of what is to be felt, and only where something is cued", () => {
    const { places } = nextDemoRep(pupil, underCue(0.3, 0.5));
    expect(places.buttBack).toBeCloseTo(habit.buttBack + 0.5 * (0.4 - habit.buttBack), 9);
    expect({ ...places, buttBack: habit.buttBack }).toEqual(habit);
  });

  it("D22 goes no further than a body can", () => {
    expect(nextDemoRep({ habit, carryOver: 1 }, underCue(3, 4)).places.buttBack).toBe(0.7);
    expect(nextDemoRep({ habit, carryOver: 1 }, underCue(-4, -3)).places.buttBack).toBe(-0.6);
  });

  it.each(["takeaway", "shaft-level-back", "arm-level-back", "arm-level-down", "shaft-level-down"] as const)(
    "D22 makes a rep that can be moved however far the cue at %s",
    (checkpoint) => {
      for (const far of [-4, 4]) {
        const practice = { ...underCue(0, 0), aims: [aimAt(checkpoint, far, far)] };
        const rep = nextDemoRep({ habit: placesOf(0), carryOver: 1 }, practice);
        const motion = demoMotion({
          golfer: usualGolfer,
          club: true,
          ball: true,
          items: [{ do: "still", seconds: 1 }, rep],
        });
        expect(motion.checkpoints).toHaveLength(8);
      }
    },
  );

  it.each(stageIds)("D22 makes a rep that can be moved in the stage %s", (stage) => {
    const rep = nextDemoRep(pupil, { ...underCue(0.3, 0.5), stage });
    const motion = demoMotion({
      golfer: usualGolfer,
      club: true,
      ball: true,
      items: [{ do: "still", seconds: 1 }, rep],
    });
    expect(motion.checkpoints.map(({ checkpoint }) => checkpoint)).toContain("arm-level-back");
  });
});
