import { bandIds, type BandId, type BandLayout } from "./bands.ts";

/** A stretch of y on the ground, metres from the ball line towards the heels; the outer bands are open-ended. */
export interface BandInterval {
  readonly band: BandId;
  readonly from: number;
  readonly to: number;
}

/**
 * The bands as stretches that cover every y once, in order from far to near. A line's band holds both of its ends (|y - line| <= tolerance);
 * lines closer together than two tolerances meet halfway, and the band between them is empty.
 */
export function bandIntervals(layout: BandLayout): readonly BandInterval[] {
  const { toeLine, heelLine, tolerance } = layout;
  const lines = [0, toeLine, heelLine];
  const edges: number[] = [];
  for (const [index, line] of lines.entries()) {
    const before = lines[index - 1];
    const after = lines[index + 1];
    edges.push(before === undefined ? line - tolerance : Math.max(line - tolerance, (before + line) / 2));
    edges.push(after === undefined ? line + tolerance : Math.min(line + tolerance, (line + after) / 2));
  }
  return bandIds.map((band, index) => ({
    band,
    from: edges[index - 1] ?? -Infinity,
    to: edges[index] ?? Infinity,
  }));
}

/** The stretch of one band. */
export function bandInterval(band: BandId, layout: BandLayout): BandInterval {
  const found = bandIntervals(layout).find((interval) => interval.band === band);
  if (!found) throw new RangeError(`bandInterval: no band ${band}`);
  return found;
}

/** The band that holds y. A line's band is closed at both ends, the bands between are open. */
export function bandAt(y: number, layout: BandLayout): BandId {
  const intervals = bandIntervals(layout);
  const onLine = intervals.find(({ from, to }, index) => index % 2 === 1 && y >= from && y <= to);
  const between = intervals.find(({ from, to }, index) => index % 2 === 0 && y > from && y < to);
  const found = onLine ?? between;
  if (!found) throw new RangeError("bandAt: y is not a number");
  return found.band;
}
