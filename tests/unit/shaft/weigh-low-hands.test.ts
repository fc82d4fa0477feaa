import { expect, test } from "vitest";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { lowness, weighLowHands } from "@overcue/client-capture/shaft/weigh-low-hands";

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
