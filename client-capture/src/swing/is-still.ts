import { angleBetween } from "@overcue/shared-geometry/angle";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { FollowedSample } from "./follow-swing.ts";
import type { ClubInPicture } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

type WithShaft = FollowedSample & { readonly shaft: ShaftInWorld; readonly angle: number };

export function hasShaft(sample: FollowedSample | undefined): sample is WithShaft {
  return sample !== undefined && sample.shaft !== null && sample.angle !== null;
}

/**
 * Whether the club stood still over the last `stillTime`: in the picture where it was seen there all the while, for its depth and its lean are never steady; else by swing angle and
 * hands.
 */
export function isStill(kept: readonly FollowedSample[]): boolean {
  const last = kept[kept.length - 1];
  if (last === undefined) return false;
  const lately = kept.slice(kept.findIndex(({ t }) => t >= last.t - swingTuning.stillTime));
  const first = lately[0];
  if (first === undefined) return false;
  const seconds = (last.t - first.t) / 1000;
  if (seconds < (0.7 * swingTuning.stillTime) / 1000) return false;
  const clubs = lately.flatMap(({ inPicture }) => (inPicture === null ? [] : [inPicture]));
  if (clubs.length === lately.length) return standsInPicture(clubs);
  if (!hasShaft(first) || !hasShaft(last)) return false;
  const from = first.shaft.grip;
  const to = last.shaft.grip;
  const moved = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
  return (
    Math.abs(last.angle - first.angle) < swingTuning.stillRate * seconds && moved < swingTuning.stillHands * seconds
  );
}

function standsInPicture(clubs: readonly ClubInPicture[]): boolean {
  const { turn, hands } = swingTuning.stillInPicture;
  const last = clubs[clubs.length - 1];
  return (
    last !== undefined &&
    clubs.every(
      ({ grip, angle }) =>
        Math.abs(angleBetween(angle, last.angle)) <= turn &&
        Math.hypot(grip.x - last.grip.x, grip.y - last.grip.y) <= hands,
    )
  );
}
