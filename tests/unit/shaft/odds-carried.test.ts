import { oddsCarried } from "@overcue/client-capture/shaft/odds-carried";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { noStandingLines, type StandingLines } from "@overcue/client-capture/shaft/standing-lines";
import { expect, test } from "vitest";

const torso = 100;
const see = (standing: StandingLines, endX: number, handsX: number): number =>
  oddsCarried(standing, 3, endX, 50, handsX, 0, torso, shaftTuning);

test("T27 what stays where it is while the hands go is not carried by them, the less so the farther they are", () => {
  const standing = noStandingLines(8);
  expect(see(standing, 200, 0)).toBe(1);
  const near = see(standing, 201, 20);
  const far = see(standing, 199, 90);
  expect(near).toBeGreaterThan(0.9);
  expect(far).toBeLessThan(0.1);
});

test("T27 what goes with the hands is carried, and so is a shaft at address while the pose trembles", () => {
  const standing = noStandingLines(8);
  see(standing, 200, 0);
  expect(see(standing, 260, 60)).toBe(1);
  for (const jitter of [-15, 12, -9, 18]) expect(see(standing, 260, 60 + jitter)).toBeGreaterThan(0.9);
});

test("T27 each direction has a memory of its own", () => {
  const standing = noStandingLines(8);
  see(standing, 200, 0);
  expect(oddsCarried(standing, 4, 200, 50, 90, 0, torso, shaftTuning)).toBe(1);
  expect(see(standing, 200, 90)).toBeLessThan(0.1);
});
