import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { bestSplit } from "./best-split.ts";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { fitCrossing, type Crossing, type FitOptions, type SeriesPoint } from "./fit-crossing.ts";
import { isFollowed } from "./is-followed.ts";

/** Milliseconds, both ends closed. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * When a quantity passes `level` for good within a stretch; null where it does not. `lastingSd`: the part of the error that every sample of the rep shares, in the series' unit.
 */
export function crossing(
  checkpoint: CheckpointId,
  series: readonly SeriesPoint[],
  level: number,
  within: Stretch,
  way: "up" | "down",
  options: FitOptions,
  lastingSd: number,
): CheckpointTime | null {
  const index = bestSplit(series, level, within, way === "up" ? 1 : -1);
  if (index === null) return null;
  const fitted = fitCrossing(series, index, level, options);
  return fitted === null ? null : dated(checkpoint, fitted, lastingSd);
}

/**
 * The same at level zero, only where the quantity was followed there from plainly below it, `below` units, or from there down to it (`isFollowed`).
 */
export function followedCrossing(
  checkpoint: CheckpointId,
  series: readonly SeriesPoint[],
  within: Stretch,
  way: "up" | "down",
  options: FitOptions,
  { lastingSd, below }: { readonly lastingSd: number; readonly below: number },
): CheckpointTime | null {
  const passed = crossing(checkpoint, series, 0, within, way, options, lastingSd);
  return passed !== null && isFollowed(series, passed.t, way, below) ? passed : null;
}

function dated(checkpoint: CheckpointId, fitted: Crossing, lastingSd: number): CheckpointTime {
  return { checkpoint, t: fitted.t, sd: Math.hypot(fitted.sd, lastingSd / Math.max(Math.abs(fitted.slope), 1e-6)) };
}
