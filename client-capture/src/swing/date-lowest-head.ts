import type { PlaceInPicture } from "./heads-in-picture.ts";
import type { StartOfGrowth } from "./start-of-growth.ts";
import { swingTuning } from "./swing-tuning.ts";
import { vertexOf } from "./vertex-of.ts";

/**
 * When the club met the ball, by its head in the picture, `heads` being its places from a while before to a while after: behind the ball the club is still coming down,
 * past it ground and club rise, away from the camera; it is lowest in the picture a moment before the ball. `down`: how long the way down took, milliseconds. Null where
 * it was not seen on both sides of its lowest, one picture shortly after the other.
 */
export function dateLowestHead(heads: readonly PlaceInPicture[], down: number): StartOfGrowth | null {
  const { longestGap, beforeBall, share, betweenPictures, least } = swingTuning.lowestHead;
  const at = heads.reduce((lowest, { y }, index) => (y > (heads[lowest]?.y ?? -Infinity) ? index : lowest), 0);
  const [before, lowest, after] = heads.slice(Math.max(0, at - 1), at + 2).map(({ t, y }) => ({ t, value: -y }));
  if (at === 0 || before === undefined || lowest === undefined || after === undefined) return null;
  const gap = after.t - before.t;
  if (gap > longestGap) return null;
  return {
    t: vertexOf(before, lowest, after) + beforeBall * down,
    sd: Math.hypot(least, betweenPictures * gap, share * down),
  };
}
