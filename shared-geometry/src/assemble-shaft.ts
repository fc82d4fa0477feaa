import type { LeanSide } from "./lean-posterior.ts";
import { worldPoint } from "./point.ts";
import { addSquares, halfWay, noCovariance } from "./shaft-covariance.ts";
import { anglesOf, directionOf } from "./shaft-angles.ts";
import type { ViewStep } from "./step-views.ts";
import type { Milliseconds } from "./units.ts";
import { leaning, type ShaftView } from "./view-shaft.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

const smallLean = 1e-3;

/**
 * The shaft and its covariance from a view, the steps of its errors, and what is known of the lean.
 * `shares`: how much of the miss in spread one sd of each error makes, in sds of the miss. The errors are normal and independent beforehand; that the
 * spread was seen as it was ties them to the lean: given a lean, their mean lies along `shares` by the miss, and they no longer vary along it
 * (conditioning of a normal distribution). `side` has its miss in sds.
 */
export function assembleShaft(
  t: Milliseconds,
  view: ShaftView,
  steps: readonly ViewStep[],
  shares: readonly number[],
  side: LeanSide,
): ShaftInWorld {
  const at = (of: ShaftView, lean = side.mean) => ({ grip: of.grip, toHead: leaning(of, lean) });
  const columns = steps.map(({ down, up }) => halfWay(at(down), at(up)));
  const perMiss = [0, 1, 2, 3, 4].map((row) =>
    columns.reduce((sum, column, index) => sum - (column[row] ?? 0) * (shares[index] ?? 0), 0),
  );
  const perLean = halfWay(at(view, side.mean - smallLean), at(view, side.mean + smallLean)).map(
    (value) => value / smallLean,
  );
  const free = columns.map((column, index) =>
    column.map((value, row) => value + (perMiss[row] ?? 0) * (shares[index] ?? 0)),
  );
  const leanSd = Math.sqrt(side.variance);
  const missWithLean = leanSd > 0 ? side.missLean / side.variance : 0;
  const missRest = Math.sqrt(Math.max(0, side.missVariance - missWithLean * side.missLean));
  const tied = [
    perLean.map((value, row) => leanSd * (value + missWithLean * (perMiss[row] ?? 0))),
    perMiss.map((value) => missRest * value),
  ];

  const middle = at(view);
  const [x = 0, y = 0, z = 0, azimuth = 0, elevation = 0] = perMiss.map((value) => value * side.missMean);
  const angles = anglesOf(middle.toHead);
  return {
    t,
    grip: worldPoint(middle.grip.x + x, middle.grip.y + y, middle.grip.z + z),
    toHead: directionOf(angles.azimuth + azimuth, angles.elevation + elevation),
    covariance: addSquares(noCovariance, [...free, ...tied]),
  };
}
