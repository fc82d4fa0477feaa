import { fitLeastSquares } from "@overcue/shared-geometry/least-squares";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointTime } from "./checkpoint-time.ts";
import type { Stretch } from "./date-crossing.ts";
import type { SeriesPoint } from "./fit-crossing.ts";
import { swingTuning } from "./swing-tuning.ts";

/** The turn about its crest, radians: `highest - exp(bend + skew x) x^2`, x in `pace` from the crest. */
interface Crest {
  readonly at: number;
  readonly highest: number;
  readonly bend: number;
  readonly skew: number;
}

/**
 * The instant at which the club's turn (radians, rising going back) is highest within a stretch (milliseconds). About its crest the turn falls off with the square of the time, and ever faster coming
 * down than it slowed going back: a curve with one crest, fitted through both ways as far as they are near it, since the club is often out of sight where it turns round. `pace`: what the way down takes,
 * milliseconds. Null where the samples have no crest in that stretch.
 */
export function highestTurn(turn: readonly SeriesPoint[], within: Stretch, pace: number): CheckpointTime | null {
  const start = thirdHighest(turn, within);
  if (start === null || !(pace > 0)) return null;
  const { drop, usual, rounds } = swingTuning.crest;
  let crest: Crest = { at: start.t, highest: start.value, bend: usual.bend, skew: usual.skew };
  let found: CheckpointTime | null = null;
  for (let round = 0, moved = Infinity; round < rounds && moved > 1; round++) {
    const near = stretchAbout(turn, crest, drop);
    const fitted = near.length < 5 ? null : fitCrest(near, crest, pace);
    if (fitted === null || fitted.crest.at < within.from || fitted.crest.at > within.to) break;
    moved = Math.abs(fitted.crest.at - crest.at);
    crest = fitted.crest;
    found = { checkpoint: "top", t: milliseconds(crest.at), sd: fitted.sd };
  }
  return found;
}

/** Samples on either side as far as the turn stays within `drop` radians of its highest. */
function stretchAbout(turn: readonly SeriesPoint[], { at, highest }: Crest, drop: number): SeriesPoint[] {
  const isBelow = ({ value }: SeriesPoint): boolean => value < highest - drop;
  const from = turn.findLast((point) => point.t < at && isBelow(point))?.t ?? -Infinity;
  const to = turn.find((point) => point.t > at && isBelow(point))?.t ?? Infinity;
  return turn.filter(({ t }) => t > from && t < to);
}

function fitCrest(points: readonly SeriesPoint[], before: Crest, pace: number): { crest: Crest; sd: number } | null {
  const { usual, usualSd, leastSd, robustBeyond } = swingTuning.crest;
  const residuals = ([highest = 0, at = 0, bend = 0, skew = 0]: readonly number[]): number[] => [
    ...points.map(({ t, value, sd }) => {
      const x = (t - before.at) / pace - at;
      const fall = Math.exp(bend + skew * Math.min(1, Math.max(-1, x))) * x ** 2;
      return (value - highest + fall) / Math.max(sd, leastSd);
    }),
    at / usualSd.at,
    (bend - usual.bend) / usualSd.bend,
    (skew - usual.skew) / usualSd.skew,
  ];
  const fit = fitLeastSquares([before.highest, 0, before.bend, before.skew], residuals, {
    measured: points.length,
    robustBeyond,
    steps: [1e-4, 1e-4, 1e-4, 1e-4],
    mostRounds: 40,
  });
  const variance = fit.covariance?.get(1, 1);
  if (variance === undefined) return null;
  const [highest = 0, at = 0, bend = 0, skew = 0] = fit.parameters;
  const excess = Math.max(1, fit.cost / Math.max(1, points.length - 4));
  const sd = Math.sqrt(Math.max(0, variance) * excess * swingTuning.sharedErrors) * pace;
  return { crest: { at: before.at + at * pace, highest, bend, skew }, sd };
}

/** The third highest sample of a stretch: single ones jump. Null where there are fewer. */
function thirdHighest(turn: readonly SeriesPoint[], { from, to }: Stretch): SeriesPoint | null {
  const sorted = turn.filter(({ t }) => t >= from && t <= to).sort((a, b) => b.value - a.value);
  return sorted[2] ?? null;
}
