import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { StationLine } from "@overcue/shared-geometry/station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { findEdges, type Edges } from "./find-edges.ts";
import { findEnd } from "./find-end.ts";
import { fitLine, type FittedLine } from "./fit-line.ts";
import { stickChannel, type Channel } from "./stick-channel.ts";
import { stationTuning } from "./station-tuning.ts";

export type SnapRefusal = "too-short" | "nothing-bright-there" | "not-straight";

export type SnappedStick =
  | { readonly ok: true; readonly stick: StickInImage; readonly contrast: number }
  | { readonly ok: false; readonly reason: SnapRefusal };

/** Shorter than this (pixels) a rough line cannot be snapped. */
const leastLength = 12;

/**
 * A stick to sub-pixel from a rough line near it: profiles across the line give both edges of the bright bar, their middles a line, over again along
 * that line; then both ends along it. `near` is the end nearer to the camera, lower in the picture. An end that is cut off by the picture's edge or
 * covered by something unlike the ground beside the stick is no end: it serves the line only.
 */
export function snapStick(
  picture: Picture,
  line: StationLine,
  near: Point<"image">,
  far: Point<"image">,
  reach: number = stationTuning.dragReach,
): SnappedStick {
  const length = Math.hypot(far.x - near.x, far.y - near.y);
  if (!(length >= leastLength)) return { ok: false, reason: "too-short" };
  const best = stickChannel(picture, near, far, reach);
  if (!best || best.contrast < stationTuning.leastContrast) return { ok: false, reason: "nothing-bright-there" };
  const { channel } = best;
  let from = best.near;
  let to = best.far;
  let fitted: FittedLine | null = null;
  let seen: Edges[] = [];
  for (let round = 0; round < stationTuning.rounds; round++) {
    const profiles = profilesAlong(channel, from, to, stationTuning.profileReach);
    if (profiles.found.length < stationTuning.leastSeen * profiles.count)
      return { ok: false, reason: "nothing-bright-there" };
    fitted = fitLine(
      profiles.found.map(({ middle }) => middle),
      stationTuning.robustBeyond,
    );
    const line = fitted;
    if (!line) return { ok: false, reason: "nothing-bright-there" };
    if (line.used.filter(Boolean).length < 0.5 * profiles.found.length) return { ok: false, reason: "not-straight" };
    seen = profiles.found.filter((_, index) => line.used[index]).map(({ edges }) => edges);
    from = onLine(line, from);
    to = onLine(line, to);
  }
  if (!fitted) return { ok: false, reason: "nothing-bright-there" };
  const contrast = median(seen.map((edges) => edges.contrast));
  const nearEnd = findEnd(best, to, from, contrast);
  const farEnd = findEnd(best, from, to, contrast);
  const line2 = fitted;
  const end = ({ at, isEnd, sd }: typeof nearEnd) => ({
    at,
    isEnd,
    acrossSd: pixels(
      Math.max(stationTuning.leastAcrossSd, line2.acrossSdAt(Math.hypot(at.x - line2.x, at.y - line2.y))),
    ),
    alongSd: pixels(Math.max(stationTuning.leastAlongSd, sd)),
  });
  return { ok: true, contrast, stick: { line, near: end(nearEnd), far: end(farEnd) } };
}

function profilesAlong(channel: Channel, from: Point<"image">, to: Point<"image">, reach: number) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  const across = { x: -uy, y: ux };
  const count = Math.max(3, Math.floor(length / stationTuning.profileStep));
  const found: { readonly middle: Point<"image">; readonly edges: Edges }[] = [];
  for (let index = 0; index < count; index++) {
    const along = ((index + 0.5) / count) * length;
    const at = { x: from.x + along * ux, y: from.y + along * uy };
    const edges = findEdges(channel, at, across, reach);
    if (!edges) continue;
    const by = (edges.first + edges.second) / 2;
    found.push({ edges, middle: imagePoint(at.x + by * across.x, at.y + by * across.y) });
  }
  return { count, found };
}

function onLine({ x, y, direction }: FittedLine, point: Point<"image">): Point<"image"> {
  const along = (point.x - x) * direction.x + (point.y - y) * direction.y;
  return imagePoint(x + along * direction.x, y + along * direction.y);
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
