import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointTime } from "./checkpoint-time.ts";
import type { SeriesPoint } from "./fit-crossing.ts";
import { swingTuning } from "./swing-tuning.ts";
import { vertexOf } from "./vertex-of.ts";

/**
 * Impact where the head's place along the target line is not known well enough to tell it: the club hangs lowest within a few centimetres of the ball, and
 * how steeply it hangs is seen plainly from behind. The hands lead the head through the ball, so that the club hangs lowest a share of the way from level (`levelAt`, milliseconds; null where that was not
 * seen) later. Null where the club did not come up again after it: it was put down, then, not swung through; or where it hung lowest before it was level.
 */
export function dateLow(
  elevation: readonly SeriesPoint[],
  within: { readonly from: number; readonly to: number },
  levelAt: number | null,
): CheckpointTime | null {
  const inside = elevation.filter(({ t }) => t >= within.from && t <= within.to);
  const lowest = inside.reduce((low, { value }, index) => (value < (inside[low]?.value ?? Infinity) ? index : low), 0);
  const at = inside[lowest];
  const before = inside[lowest - 1];
  const after = inside[lowest + 1];
  if (at === undefined || before === undefined || after === undefined) return null;
  const { leastRise, offBall, handsLead } = swingTuning.low;
  const risen = Math.max(...inside.slice(lowest).map(({ value }) => value)) - at.value;
  const fallen = Math.max(...inside.slice(0, lowest).map(({ value }) => value)) - at.value;
  if (risen < leastRise || fallen < leastRise) return null;
  const apart = after.t - before.t;
  // Within the noise of the elevation any of these is the lowest.
  const level = risesThrough(inside, at.value + offBall + at.sd);
  const low = vertexOf(before, at, after);
  const way = levelAt === null ? 0 : low - levelAt;
  if (way < 0) return null;
  const sd = Math.hypot(apart / 4, level / 2, handsLead.sd * way);
  return { checkpoint: "impact", t: milliseconds(low - handsLead.share * way), sd };
}

/** How long the club hung no higher than `level`, milliseconds. */
function risesThrough(points: readonly SeriesPoint[], level: number): number {
  const low = points.filter(({ value }) => value <= level);
  return (low.at(-1)?.t ?? 0) - (low[0]?.t ?? 0);
}
