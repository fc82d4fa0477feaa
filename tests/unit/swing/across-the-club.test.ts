import { describe, expect, it } from "vitest";
import { acrossTheClub } from "@overcue/client-capture/swing/across-the-club";
import { driftOf } from "@overcue/client-capture/swing/leave-rest";
import type { HeadInPicture } from "@overcue/client-capture/swing/heads-in-picture";

const lean = Math.PI / 4;

/** A club at rest, leaning by 45 degrees, whose head is found `along(i)` metres farther out and `across(i)` aside in picture `i`. */
function heads(along: (i: number) => number, across: (i: number) => number): HeadInPicture[] {
  return Array.from({ length: 12 }, (_, i) => ({
    t: 33 * i,
    x: 1 + Math.cos(lean) * along(i) - Math.sin(lean) * across(i),
    y: 2 + Math.sin(lean) * along(i) + Math.cos(lean) * across(i),
    angle: lean,
  }));
}

const drift = (found: readonly HeadInPicture[]): number => driftOf(acrossTheClub(found));

describe("a head's way across the club and along it", () => {
  it("K5.10 counts in full across, and along where its end is found well", () => {
    expect(
      drift(
        heads(
          () => 0,
          (i) => 0.01 * i,
        ),
      ),
    ).toBeCloseTo(0.08, 6);
    expect(
      drift(
        heads(
          (i) => 0.01 * i,
          () => 0,
        ),
      ),
    ).toBeCloseTo(0.08, 6);
  });

  it("K5.10 counts the less along, the more its end scatters there, and still in full across", () => {
    const ends = [0, 0.2, 0.1, 0.25, 0.05, 0.15, 0.2, 0, 0.3, 0.2, 0.25, 0.2];
    const frayed = (i: number): number => ends[i] ?? 0;
    const middles = driftOf(heads(frayed, () => 0).map(({ t, x, y }) => ({ t, at: [x, y] })));
    expect(middles).toBeGreaterThan(0.06);
    expect(drift(heads(frayed, () => 0))).toBeLessThan(0.05);
    expect(drift(heads(frayed, (i) => 0.01 * i))).toBeGreaterThan(0.08);
  });
});
