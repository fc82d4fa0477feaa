import { describe, expect, it } from "vitest";
import { slowTempo } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { finishedOf, heldRep, motionOf, rep, runClock, still } from "../../fakes/clock-run.ts";

describe("live", () => {
  it("K4.1 tells a checkpoint live at most once a rep, and none of a full-speed way down at 30 pictures a second", () => {
    const slow = runClock(motionOf(rep("rehearsal", slowTempo))).flatMap((output) => output.passed);
    const names = slow.map((one) => one.checkpoint);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain("arm-level-back");
    expect(names).toContain("arm-level-down");
    const fast = runClock(motionOf(rep("full")), 30).flatMap((output) => output.passed);
    expect(fast.filter((one) => one.checkpoint === "shaft-level-down")).toEqual([]);
  });

  it("K4.1 states the error of what it tells live: nine in ten lie within two standard errors, in pictures as unsteady as live ones are", () => {
    const motion = motionOf(
      ...(["rehearsal", "half", "rehearsal"] as const).flatMap((kind) => [rep(kind, slowTempo), still(1.5)]),
    );
    const told = runClock(motion, 60, { angle: 0.03, grip: 0.03, body: 0.03 }).flatMap(({ passed }) => passed);
    const inside = told.filter(({ checkpoint, t, sd }) => {
      const truths = motion.checkpoints.filter((one) => one.checkpoint === checkpoint);
      return Math.min(...truths.map((truth) => Math.abs(truth.t - t))) < 2 * sd;
    });
    expect(told.length).toBeGreaterThan(10);
    expect(inside.length / told.length).toBeGreaterThan(0.9);
  });

  it("K4.2 names the checkpoint that the club is held at until it moves on", () => {
    const outputs = runClock(motionOf(heldRep("arm-level-back", 2)));
    const held = outputs.filter((output) => output.phase === "hold");
    expect(held.length).toBeGreaterThan(60);
    expect(new Set(held.map((output) => output.checkpoint))).toEqual(new Set(["arm-level-back"]));
    expect(finishedOf(outputs).length).toBe(1);
  });
});
