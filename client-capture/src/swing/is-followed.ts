import type { SeriesPoint } from "./fit-crossing.ts";
import { swingTuning } from "./swing-tuning.ts";

/**
 * Whether a quantity was followed between its passing zero at `t` (milliseconds) and where it was plainly below, `below` units, before (`up`) or after it: held at zero on the other side of
 * a gap, it only trembles there, and may have passed the other way. A quantity that was never plainly below on that side was not followed either.
 */
export function isFollowed(series: readonly SeriesPoint[], t: number, way: "up" | "down", below: number): boolean {
  const outwards =
    way === "up" ? series.filter((point) => point.t <= t).toReversed() : series.filter((point) => point.t >= t);
  let last = t;
  for (const point of outwards) {
    if (Math.abs(point.t - last) > swingTuning.longestUnfollowed) return false;
    if (point.value <= -below) return true;
    last = point.t;
  }
  return false;
}
