import { describe, expect, it } from "vitest";
import { tempoBetween } from "@overcue/client-capture/swing/tempo-between";
import { quantile } from "../../accuracy/quantile.ts";
import { gaussian, seededRandom } from "../../scenes/random.ts";

describe("tempo", () => {
  it("K2.2 is known as well as its three instants let it", () => {
    const random = seededRandom(11);
    const shaken = (t: number, sd: number): { t: number; sd: number } => ({ t: t + sd * gaussian(random), sd });
    const pulls = Array.from({ length: 4000 }, () => {
      const top = shaken(800, 15);
      const told = tempoBetween(shaken(0, 40), top, top, shaken(1067, 5));
      return told === null ? Infinity : Math.abs(told.ratio - 800 / 267) / told.ratioSd;
    });
    const covered = pulls.filter((pull) => pull < 1.96).length / pulls.length;
    expect(covered).toBeGreaterThan(0.92);
    expect(covered).toBeLessThan(0.98);
    expect(quantile(pulls, 0.5)).toBeLessThan(1);
  });

  it("K3.4 is not told where an instant is missing or does not follow", () => {
    const at = (t: number): { t: number; sd: number } => ({ t, sd: 1 });
    expect(tempoBetween(at(0), null, at(800), at(1000))).toBeNull();
    expect(tempoBetween(at(0), at(800), at(800), null)).toBeNull();
    expect(tempoBetween(at(900), at(800), at(800), at(1000))).toBeNull();
  });
});
