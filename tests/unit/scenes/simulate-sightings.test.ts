import { angleBetween } from "@overcue/shared-geometry/angle";
import { describe, expect, it } from "vitest";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings, type Sighting } from "../../scenes/session/simulate-sightings.ts";

const degree = Math.PI / 180;
const seen = (index: number): readonly Sighting[] => [...simulateSightings(practiceSession(index), usualSightErrors)];

describe("sightings without pictures", () => {
  const slow = seen(0);
  const errors = slow.flatMap(({ shaft, truth }) =>
    shaft.status === "tracked" && truth
      ? [{ off: Math.abs(angleBetween(truth.angleInPicture, shaft.angle)), sd: shaft.sd }]
      : [],
  );

  it("are the same for the same session", () => {
    const again = simulateSightings(practiceSession(0), usualSightErrors);
    for (const first of slow.slice(0, 50)) expect(again.next().value).toEqual(first);
  });

  it("err by fractions of a degree when slow, and inside what they state in nine of ten and more", () => {
    const sorted = errors.map(({ off }) => off).toSorted((a, b) => a - b);
    expect(sorted[sorted.length >> 1]).toBeLessThan(0.6 * degree);
    expect(sorted[Math.floor(0.95 * sorted.length)]).toBeGreaterThan(0.4 * degree);
    const covered = errors.filter(({ off, sd }) => off <= 1.96 * sd).length / errors.length;
    expect(covered).toBeGreaterThan(0.9);
  });

  it("track a shaft that shows well nearly always, and one that does not nearly never", () => {
    const share = (list: readonly Sighting[]): number =>
      list.filter(({ shaft }) => shaft.status === "tracked").length / list.length;
    const { height } = practiceSession(0).scene.camera;
    expect(share(slow.filter((each) => each.visible > 0.5 && each.visiblePixels > height / 15))).toBeGreaterThan(0.95);
    const hidden = slow.filter((each) => each.visiblePixels < height / 60);
    expect(hidden.length).toBeGreaterThan(10);
    expect(share(hidden)).toBeLessThan(0.2);
  });

  it("come at each session's rate and for both hands, with every kind of rep among 24 sessions", () => {
    const sessions = Array.from({ length: 24 }, (_, index) => practiceSession(index));
    expect(new Set(sessions.map(({ scene }) => scene.framesPerSecond))).toEqual(new Set([30, 60, 120]));
    expect(new Set(sessions.map(({ scene }) => scene.camera.handed))).toEqual(new Set(["left", "right"]));
    const kinds = new Set(sessions.flatMap(({ motion }) => motion.reps.map(({ plan }) => plan.kind)));
    expect([...kinds].toSorted()).toEqual(["continuous", "flow", "full", "half", "pump", "rehearsal"]);
    expect(sessions.reduce((sum, { motion }) => sum + motion.reps.length, 0)).toBeGreaterThan(140);
    expect(sessions.every(({ motion }) => motion.checkpoints.length > 0)).toBe(true);
  });
});
