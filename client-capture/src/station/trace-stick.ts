import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { findEdges, type Edges } from "./find-edges.ts";
import { fitLine, type FittedLine } from "./fit-line.ts";
import type { Channel } from "./stick-channel.ts";
import { stationTuning } from "./station-tuning.ts";

/** A bar's line in the picture, fitted to both of its edges. */
export interface TracedStick {
  readonly line: FittedLine;
  /** The two places it was looked for between, brought onto the line. */
  readonly from: Point<"image">;
  readonly to: Point<"image">;
  /** How far the bar stands out, in sds of the ground: the middle one of the profiles that showed it. */
  readonly contrast: number;
  /** Share of the profiles that showed the bar on the line. */
  readonly seenShare: number;
}

export type TraceRefusal = "nothing-bright-there" | "not-straight";

/**
 * Follows a bar between two places near its ends: profiles across the line give both edges, their middles a line, over again along that line
 * until it settles.
 */
export function traceStick(channel: Channel, near: Point<"image">, far: Point<"image">): TracedStick | TraceRefusal {
  const { rounds, profileReach, leastSeen, robustBeyond } = stationTuning;
  let from = near;
  let to = far;
  let traced: TracedStick | null = null;
  for (let round = 0; round < rounds; round++) {
    const { found: all, count } = profilesAlong(channel, from, to, profileReach);
    const found = alike(all);
    if (found.length < leastSeen * count) return "nothing-bright-there";
    const line = fitLine(
      found.map(({ middle }) => middle),
      robustBeyond,
    );
    if (!line) return "nothing-bright-there";
    const used = found.filter((_, index) => line.used[index]);
    if (used.length < 0.5 * found.length) return "not-straight";
    from = onLine(line, from);
    to = onLine(line, to);
    const contrast = median(used.map(({ edges }) => edges.contrast));
    traced = { line, from, to, contrast, seenShare: used.length / count };
  }
  return traced ?? "nothing-bright-there";
}

interface Profile {
  readonly index: number;
  readonly middle: Point<"image">;
  readonly edges: Edges;
}

/**
 * The profiles that show one and the same bar: about as wide and as plain as most, in runs of some length. What a shoe or a leg over the stick
 * shows is wider or duller, and by chance alike only here and there.
 */
function alike(profiles: readonly Profile[]): Profile[] {
  const { alikeWidth, alikeContrast, leastRun } = stationTuning;
  const widthOf = ({ edges }: Profile): number => edges.second - edges.first;
  const width = median(profiles.map(widthOf));
  const contrast = median(profiles.map(({ edges }) => edges.contrast));
  const within = (value: number, usual: number, times: number): boolean =>
    value < usual * times && value * times > usual;
  const same = profiles.filter(
    (profile) => within(widthOf(profile), width, alikeWidth) && within(profile.edges.contrast, contrast, alikeContrast),
  );
  const near = (a: Profile | undefined, b: Profile): boolean => a !== undefined && Math.abs(a.index - b.index) <= 2;
  const kept: Profile[] = [];
  let run: Profile[] = [];
  for (const profile of same) {
    if (!near(run.at(-1), profile)) {
      if (run.length >= leastRun) kept.push(...run);
      run = [];
    }
    run.push(profile);
  }
  if (run.length >= leastRun) kept.push(...run);
  return kept;
}

function profilesAlong(channel: Channel, from: Point<"image">, to: Point<"image">, reach: number) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  const across = { x: -uy, y: ux };
  const count = Math.max(3, Math.floor(length / stationTuning.profileStep));
  const found: Profile[] = [];
  for (let index = 0; index < count; index++) {
    const along = ((index + 0.5) / count) * length;
    const at = { x: from.x + along * ux, y: from.y + along * uy };
    const edges = findEdges(channel, at, across, reach);
    if (!edges) continue;
    const by = (edges.first + edges.second) / 2;
    found.push({ index, edges, middle: imagePoint(at.x + by * across.x, at.y + by * across.y) });
  }
  return { count, found };
}

function onLine({ x, y, direction }: FittedLine, point: Point<"image">): Point<"image"> {
  const along = (point.x - x) * direction.x + (point.y - y) * direction.y;
  return imagePoint(x + along * direction.x, y + along * direction.y);
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
