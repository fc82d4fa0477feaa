import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import type { Picture } from "../picture/picture.ts";
import { snapStick } from "./snap-stick.ts";
import { stationTuning } from "./station-tuning.ts";

/** A moved stick looks about as long as before, as a share of that. */
const shortest = 0.6;
const longest = 1.4;

export type StickLook =
  | { readonly seen: "still" }
  | { readonly seen: "moved"; readonly stick: StickInImage }
  /** Neither where it was nor plainly anywhere near: somebody stands on it. */
  | { readonly seen: "hidden" };

/**
 * Whether a stick is still where it was. What lies there is asked first, then the neighbourhood; only something that shows on most of its length with
 * one end at least passes for the stick elsewhere, so that the edge of a shoe does not.
 */
export function lookForStick(picture: Picture, stick: StickInImage): StickLook {
  const { stillReach, watchReach, kickReach, movedBy, leastSeenShare, movedSeenShare } = stationTuning;
  const { line, near, far } = stick;
  const here = snapStick(picture, line, near.at, far.at, stillReach);
  if (here.ok && here.seenShare >= leastSeenShare && offLine(stick, here.stick) <= movedBy) return { seen: "still" };
  for (const reach of [watchReach, kickReach]) {
    const there = snapStick(picture, line, near.at, far.at, reach);
    if (!there.ok || there.runsOn || there.seenShare < movedSeenShare) continue;
    const isStick = there.stick.near.isEnd || there.stick.far.isEnd;
    const share = lengthOf(there.stick) / lengthOf(stick);
    if (isStick && share > shortest && share < longest && offLine(stick, there.stick) > movedBy) {
      return { seen: "moved", stick: there.stick };
    }
  }
  return { seen: "hidden" };
}

/** How far the farther end of a bar lies beside a stick's line, pixels. Both are seen from one end to about the other. */
function offLine({ near, far }: StickInImage, bar: StickInImage): number {
  const dx = far.at.x - near.at.x;
  const dy = far.at.y - near.at.y;
  const across = (point: { readonly x: number; readonly y: number }): number =>
    Math.abs((point.x - near.at.x) * dy - (point.y - near.at.y) * dx) / Math.hypot(dx, dy);
  return Math.max(across(bar.near.at), across(bar.far.at));
}

const lengthOf = ({ near, far }: StickInImage): number => Math.hypot(far.at.x - near.at.x, far.at.y - near.at.y);
