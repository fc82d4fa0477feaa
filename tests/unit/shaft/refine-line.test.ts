import { refineLine } from "@overcue/client-capture/shaft/refine-line";
import { expect, test } from "vitest";
import { drawPicture, seeded } from "./draw-picture.ts";

/** Fits `count` drawn lines from guesses that are off; errors in radians with what the fit says of them. */
function fitMany(count: number, noise: number, seed: number) {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const angle = 2 * Math.PI * random();
    const x = 110 + random();
    const y = 110 + random();
    const picture = drawPicture(220, 220, 100, [{ x, y, angle, length: 95, width: 2.4, level: 170 }], noise, random);
    const guess = {
      x: x + random() - 0.5,
      y: y + random() - 0.5,
      angle: angle + 0.02 * (random() - 0.5),
      from: 12,
      to: 92,
    };
    const fit = refineLine(picture, guess, 80, null);
    return fit === null ? null : { error: fit.angle - angle, sd: fit.angleSd };
  });
}

test("T16 both edges of a clean line give its direction to a tenth of a degree", () => {
  for (const fit of fitMany(40, 0, 11)) {
    expect(fit).not.toBeNull();
    expect(Math.abs(fit?.error ?? Infinity)).toBeLessThan(0.1 * (Math.PI / 180));
  }
});

test("T17 the fit's own error holds: 95 % intervals cover at least 90 % under noise", () => {
  const fits = fitMany(120, 25, 12).filter((fit) => fit !== null);
  const covered = fits.filter((fit) => Math.abs(fit.error) <= 1.96 * fit.sd).length;
  expect(fits.length).toBeGreaterThan(110);
  expect(covered / fits.length).toBeGreaterThanOrEqual(0.9);
});

test("T18 where there is no line there is no fit, or one that owns up to it", () => {
  const picture = drawPicture(220, 220, 100, [], 0, seeded(4));
  expect(refineLine(picture, { x: 110, y: 110, angle: 0.4, from: 12, to: 92 }, 80, null)).toBeNull();
});
