import { refineLine } from "@overcue/client-capture/shaft/refine-line";
import { expect, test } from "vitest";
import { quantile } from "../../accuracy/quantile.ts";
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
    const fit = refineLine(picture, guess, 80, 0);
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
  expect(refineLine(picture, { x: 110, y: 110, angle: 0.4, from: 12, to: 92 }, 80, 0)).toBeNull();
});

/** How far off a fit is that starts at a line's beginning, a little turned, in a picture of `lines`; radians, not a number where there is none. */
function errorAmong(
  lines: Parameters<typeof drawPicture>[3],
  { x, y, angle }: { readonly x: number; readonly y: number; readonly angle: number },
  beside: number,
  random: () => number,
): number {
  const picture = drawPicture(300, 300, 100, lines, 6, random);
  const fit = refineLine(picture, { x, y, angle: angle + 0.01, from: 12, to: 128 }, 100, beside);
  return fit === null ? Number.NaN : Math.abs(fit.angle - angle);
}

/** A rod beside a shaft, three pixels off it, both parallel; what the fit with and without a step makes of them. */
function fitRod(beside: number, seed: number) {
  const random = seeded(seed);
  return Array.from({ length: 40 }, () => {
    const angle = 2 * Math.PI * random();
    const [x, y] = [150 + random(), 150 + random()];
    const aside = 3 * Math.sign(random() - 0.5);
    const shaft = { x, y, angle, length: 130, width: 2, level: 140 };
    const rod = { x: x - Math.sin(angle) * aside, y: y + Math.cos(angle) * aside, angle, length: 75 };
    return errorAmong([shaft, { ...rod, width: 2.4, level: 230 }], shaft, beside, random);
  });
}

test("T36 a rod beside the shaft that ends before it does not turn the line towards it", () => {
  const straight = quantile(fitRod(0, 21), 0.5);
  const stepped = quantile(fitRod(0.035, 21), 0.5);
  expect(straight).toBeGreaterThan(0.5 * (Math.PI / 180));
  expect(stepped).toBeLessThan(0.15 * (Math.PI / 180));
});

test("T36 where nothing lies beside the shaft no step is made up", () => {
  const random = seeded(22);
  for (let i = 0; i < 40; i++) {
    const angle = 2 * Math.PI * random();
    const line = { x: 110, y: 110, angle, length: 95, width: 2.4, level: 170 };
    const picture = drawPicture(220, 220, 100, [line], 12, random);
    const fit = refineLine(picture, { x: 110, y: 110, angle: angle + 0.005, from: 12, to: 92 }, 80, 0.035);
    expect(fit?.step).toBe(0);
    expect(Math.abs((fit?.angle ?? Infinity) - angle)).toBeLessThan(0.5 * (Math.PI / 180));
  }
});

test("T45 a shaft that shows as its lit edge, beyond a dark grip that shows as its middle, is not turned by where the two meet", () => {
  const random = seeded(23);
  for (let i = 0; i < 40; i++) {
    const angle = 2 * Math.PI * random();
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const aside = 1.2 * Math.sign(random() - 0.5);
    const [x, y] = [150 + random(), 150 + random()];
    const grip = { x, y, angle, length: 40, width: 3, level: 30 };
    const shaft = { x: x + 40 * cos - sin * aside, y: y + 40 * sin + cos * aside, angle, length: 90 };
    const error = errorAmong([grip, { ...shaft, width: 2, level: 170 }], grip, 0, random);
    expect(error).toBeLessThan(0.25 * (Math.PI / 180));
  }
});
