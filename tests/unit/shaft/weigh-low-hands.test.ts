import { describe, expect, test } from "vitest";
import type { Handed } from "@overcue/shared-geometry/station";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { arrivalOdds } from "@overcue/client-capture/shaft/arrival-odds";
import { lowness, weighLowHands, weighRestingHands } from "@overcue/client-capture/shaft/weigh-low-hands";

const directions = 240;
const at = (degrees: number): number => Math.round(((degrees + 360) % 360) / (360 / directions));

/** What is left of the likelihood of a shaft in a direction (degrees, y down) after so many pictures of a second. */
function leftOf(degrees: number, height: number, pictures: number): number {
  const likelihood = new Float32Array(directions).fill(1);
  for (let i = 0; i < pictures; i++) {
    weighLowHands(likelihood, lowness(height, shaftTuning), 1 / pictures, shaftTuning);
  }
  return likelihood[at(degrees)] ?? 0;
}

test("T41 in hands as low as at address a shaft that points up is the less likely, the longer it does", () => {
  expect(leftOf(-90, -0.3, 60)).toBeLessThan(0.01);
  expect(leftOf(-90, -0.3, 60)).toBeCloseTo(leftOf(-90, -0.3, 30), 4);
  expect(leftOf(-120, -0.3, 60)).toBeLessThan(0.1);
});

test.each([50, 130, 0, 180, 20])(
  "T41 one that points %d degrees from level or down is as likely as before",
  (angle) => {
    expect(leftOf(angle, -0.3, 60)).toBe(1);
  },
);

test("T41 in hands above the hips any direction is as likely as before", () => {
  expect(leftOf(-90, 0.2, 60)).toBe(1);
  expect(leftOf(-90, 0.05, 60)).toBeGreaterThan(leftOf(-90, -0.3, 60));
});

test("T41 a look at what stands still tells more in a second than that takes away", () => {
  const { evidenceCap, stillWeight, stillLook, upCost } = shaftTuning;
  expect(upCost).toBeLessThan((evidenceCap * stillWeight) / stillLook);
});

describe("hands that rest as low as at address", () => {
  /** What is left after a second of pictures; the direction as seen of a right-hander, degrees. */
  function restsAt(degrees: number, rests: number, pictures: number, handed: Handed = "right"): number {
    const likelihood = new Float32Array(directions).fill(1);
    const { aside } = arrivalOdds(directions, handed, shaftTuning);
    for (let i = 0; i < pictures; i++) weighRestingHands(likelihood, aside, rests, 1 / pictures, shaftTuning);
    return likelihood[at(handed === "right" ? degrees : 180 - degrees)] ?? 0;
  }

  test.each([0, 110, 180, -90])("T55 hold no club that points to %d degrees", (angle) => {
    expect(restsAt(angle, 1, 60)).toBeLessThan(1e-6);
    expect(restsAt(angle, 1, 60, "left")).toBeLessThan(1e-6);
    expect(restsAt(angle, 1, 20)).toBeCloseTo(restsAt(angle, 1, 60), 6);
  });

  test.each([20, 45, 52, 65, 88])("T55 may hold one that points to %d degrees", (angle) => {
    expect(restsAt(angle, 1, 60)).toBe(1);
    expect(restsAt(angle, 1, 60, "left")).toBe(1);
  });

  test("T55 as far as they rest", () => {
    expect(restsAt(0, 0, 60)).toBe(1);
    expect(restsAt(0, 0.1, 60)).toBeGreaterThan(restsAt(0, 0.5, 60));
  });

  test("T55 looks at what stands tell less in a second than that takes away, and a picture of what moves tells more", () => {
    const { evidenceCap, evidenceWeight, stillWeight, stillLook, asideCost } = shaftTuning;
    expect(asideCost).toBeGreaterThan((evidenceCap * stillWeight) / stillLook);
    expect(asideCost / 30).toBeLessThan(evidenceCap * evidenceWeight);
  });
});
