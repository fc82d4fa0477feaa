import type { Point } from "@overcue/shared-geometry/point";
import type { StationLine } from "@overcue/shared-geometry/station";
import type { StickEnd, StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { findEnd, type FoundEnd } from "./find-end.ts";
import type { FittedLine } from "./fit-line.ts";
import { stickChannel } from "./stick-channel.ts";
import { stationTuning } from "./station-tuning.ts";
import { traceStick, type TraceRefusal } from "./trace-stick.ts";

export type SnapRefusal = "too-short" | TraceRefusal;

export type SnappedStick =
  | {
      readonly ok: true;
      readonly stick: StickInImage;
      readonly contrast: number;
      /** Share of the length between the two given places on which the bar shows. */
      readonly seenShare: number;
      /** Whether the bar goes on beyond the look for its ends, which a stick of the stated length does not. */
      readonly runsOn: boolean;
    }
  | { readonly ok: false; readonly reason: SnapRefusal };

/** Shorter than this (pixels) a rough line cannot be snapped. */
const leastLength = 12;

/**
 * A stick to sub-pixel from a rough line near it: profiles across the line give both edges of the bright bar, their middles a line, over again along
 * that line; then both ends along it. `near` is the end nearer to the camera, lower in the picture. An end that is cut off by the picture's edge or
 * covered by something unlike the ground beside the stick is no end: it serves the line only.
 * `reach`: how far to the sides the bar may lie; `endReach`: how far before and beyond the given ends the true ones may, as a share of the length.
 */
export function snapStick(
  picture: Picture,
  line: StationLine,
  near: Point<"image">,
  far: Point<"image">,
  reach: number = stationTuning.dragReach,
  endReach: number = stationTuning.endReach,
): SnappedStick {
  const length = Math.hypot(far.x - near.x, far.y - near.y);
  if (!(length >= leastLength)) return { ok: false, reason: "too-short" };
  const best = stickChannel(picture, near, far, reach);
  if (!best || best.contrast < stationTuning.leastContrast) return { ok: false, reason: "nothing-bright-there" };
  const traced = traceStick(best.channel, best.near, best.far);
  if (typeof traced === "string") return { ok: false, reason: traced };
  const { contrast, from, to, seenShare } = traced;
  const look = { back: Math.max(leastLook, endReach * length), on: Math.max(leastLook, endReach * length) };
  const nearEnd = findEnd(best, to, from, contrast, look);
  const farEnd = findEnd(best, from, to, contrast, look);
  const stick = { line, near: stickEnd(nearEnd, traced.line), far: stickEnd(farEnd, traced.line) };
  return { ok: true, contrast, stick, seenShare, runsOn: nearEnd.runsOn || farEnd.runsOn };
}

/** Ends are looked for at least this far before and beyond where they are said to be, pixels. */
const leastLook = 6;

function stickEnd({ at, isEnd, sd }: FoundEnd, line: FittedLine): StickEnd {
  const { leastAcrossSd, leastAlongSd } = stationTuning;
  return {
    at,
    isEnd,
    acrossSd: pixels(Math.max(leastAcrossSd, line.acrossSdAt(Math.hypot(at.x - line.x, at.y - line.y)))),
    alongSd: pixels(Math.max(leastAlongSd, sd)),
  };
}
