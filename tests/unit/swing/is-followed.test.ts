import { describe, expect, it } from "vitest";
import { isFollowed } from "@overcue/client-capture/swing/is-followed";
import { swingTuning } from "@overcue/client-capture/swing/swing-tuning";

/** Hands over the shoulder every 50 ms: rising for a second, held about level for two, up for one, and the same way down again. */
const rising = (t: number): number => Math.min(0, t / 1000 - 1);
const held = (t: number): number => 0.01 * Math.sin(t);
const heightAt = (t: number): number => {
  if (t < 1000) return rising(t);
  if (t < 3000) return held(t);
  return t < 5000 ? 0.3 : t < 7000 ? held(t) : rising(8000 - t);
};
const seriesWithout = (from: number, to: number) =>
  Array.from({ length: 161 }, (_, index) => index * 50)
    .filter((t) => t < from || t > to)
    .map((t) => ({ t, value: heightAt(t), sd: 0.01 }));
const below = 0.05;

describe("whether hands at arm level were followed there", () => {
  it("K3.4 takes a hold going back for that, and one coming down for that, where the way between them was not seen", () => {
    const series = seriesWithout(2900, 5200);
    expect(isFollowed(series, 1500, "up", below)).toBe(true);
    expect(isFollowed(series, 6500, "down", below)).toBe(true);
  });

  it("K3.4 takes neither for the other", () => {
    const series = seriesWithout(2900, 5200);
    expect(isFollowed(series, 1500, "down", below)).toBe(false);
    expect(isFollowed(series, 6500, "up", below)).toBe(false);
  });

  it("K3.4 bears a gap as long as the tuning says, and none where the hands were never plainly below", () => {
    const most = swingTuning.longestUnfollowed;
    expect(isFollowed(seriesWithout(801, 800 + most - 50), 800 + most, "up", below)).toBe(true);
    expect(isFollowed(seriesWithout(701, 800 + most), 900 + most, "up", below)).toBe(false);
    expect(isFollowed(seriesWithout(0, 970), 1500, "up", below)).toBe(false);
  });
});
