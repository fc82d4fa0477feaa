import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { StickChannel } from "./stick-channel.ts";
import { stationTuning } from "./station-tuning.ts";

export interface FoundEnd {
  readonly at: Point<"image">;
  readonly isEnd: boolean;
  /** One standard deviation along the stick. */
  readonly sd: number;
  /** The bar goes on as bright as before to where the look ended. */
  readonly runsOn: boolean;
}

/** Beside the stick, this far off its middle, the ground is looked at (pixels). */
const asideNear = 4;
const asideFar = 7;

/** So far beyond its end a stick no longer tints the picture, whose colours are half as fine as its brightness (pixels). */
const clearOfEnd = 3;

/** Over this much of the picture an end is smeared by lens, sharpening and packing (pixels). */
const smear = 5;

/**
 * Where a stick ends, looked for along the line from `from` through `towards`, from `back` pixels before that to `on` pixels beyond it: the
 * brightness over the ground beside it falls to half there and stays down, and the area under the fall says where to a fraction of a pixel.
 * Where it never falls, or the picture ends first, or something unlike the ground covers the rest, the last bright place on the line serves (no end).
 */
export function findEnd(
  seen: Pick<StickChannel, "channel" | "whitened">,
  from: Point<"image">,
  towards: Point<"image">,
  contrast: number,
  { back, on }: { readonly back: number; readonly on: number },
): FoundEnd {
  const length = Math.hypot(towards.x - from.x, towards.y - from.y);
  const ux = (towards.x - from.x) / length;
  const uy = (towards.y - from.y) / length;
  const across = { x: -uy, y: ux };
  const place = (along: number): Point<"image"> => imagePoint(from.x + along * ux, from.y + along * uy);
  const { endShare, endGap, hiddenStep } = stationTuning;
  const start = Math.max(0, Math.floor(length - back - 2 * smear));
  const stop = Math.ceil(length + on);
  // The places beyond the look are needed to see that it stays down.
  const values: number[] = [];
  for (let along = start; along <= stop + smear + endGap; along++) {
    const over = overGround(seen.channel, place(along), across);
    if (over === null) break;
    values.push(over);
  }
  const noEnd = (along: number, runsOn: boolean): FoundEnd => ({
    at: place(along),
    isEnd: false,
    sd: stationTuning.endGap,
    runsOn,
  });
  const level = endShare * contrast;
  const fall = lastFall(values, level, endGap);
  if (fall === null) {
    const last = values.findLastIndex((value) => value >= level);
    return noEnd(start + Math.max(0, last), last >= values.length - endGap && values.length > stop - start);
  }
  if (start + fall > stop) return noEnd(length, true);
  const before = values.slice(Math.max(0, Math.round(fall) - 3 * smear), Math.max(1, Math.round(fall) - smear + 2));
  const beyond = values.slice(Math.round(fall) + smear - 1, Math.round(fall) + smear + endGap);
  const high = median(before);
  const low = median(beyond);
  const first = Math.max(0, Math.round(fall) - smear);
  const last = Math.min(values.length - 1, Math.round(fall) + smear);
  let area = 0;
  for (let index = first; index <= last; index++) area += ((values[index] ?? 0) - low) / (high - low);
  // The samples stand for a pixel of length each, and half of one lies before the first.
  const end = start + first - 0.5 + area;
  const noise = Math.hypot(1, spreadOf(beyond)) * Math.sqrt((last - first + 1) / 2);
  const sd = noise / Math.max(1e-6, high - low);
  const plain = high - low > level && Math.abs(end - start - fall) < smear / 2;
  const strange = strangeness(seen.whitened, place, end, across);
  if (!plain || strange === null || strange > hiddenStep) return noEnd(start + fall, false);
  return { at: place(end), isEnd: true, sd, runsOn: false };
}

/** Where the values fall below a level for good, between samples; null where they do not or were never above it. */
function lastFall(values: readonly number[], level: number, gap: number): number | null {
  let fall: number | null = null;
  let isUp = false;
  for (const [index, value] of values.entries()) {
    if (value >= level) {
      // A bright blade of grass some way off is not the stick going on.
      if (fall !== null && index - fall > gap) break;
      isUp = true;
      fall = null;
      continue;
    }
    if (!isUp || fall !== null) continue;
    const before = values[index - 1] ?? level;
    fall = index - 1 + (before - level) / Math.max(1e-6, before - value);
  }
  return fall !== null && values.length - fall > gap ? fall : null;
}

/** Brightness on the line over the ground on both sides of it; null outside of the picture. */
function overGround(
  channel: StickChannel["channel"],
  at: Point<"image">,
  across: { readonly x: number; readonly y: number },
): number | null {
  let on = 0;
  for (const by of [-0.6, 0, 0.6]) {
    const value = channel(at.x + by * across.x, at.y + by * across.y);
    if (value === null) return null;
    on += value / 3;
  }
  const sides = [-asideFar, -asideNear, asideNear, asideFar]
    .map((by) => channel(at.x + by * across.x, at.y + by * across.y))
    .filter((value) => value !== null);
  return sides.length === 0 ? null : on - sides.reduce((sum, value) => sum + value, 0) / sides.length;
}

/**
 * How unlike the ground beside the stick just before its end the place just beyond it is, sds; null outside of the picture. Compared close by, so that
 * the edge of a mat farther off is not taken for a shoe.
 */
function strangeness(
  whitened: StickChannel["whitened"],
  place: (along: number) => Point<"image">,
  end: number,
  across: { readonly x: number; readonly y: number },
): number | null {
  const sum: [number, number, number] = [0, 0, 0];
  const { endGap } = stationTuning;
  const gather = (along: number, aside: number, by: number): boolean => {
    const at = place(along);
    const colour = whitened(at.x + aside * across.x, at.y + aside * across.y);
    if (!colour) return false;
    for (let channel = 0; channel < 3; channel++) sum[channel] = (sum[channel] ?? 0) + by * (colour[channel] ?? 0);
    return true;
  };
  for (let step = clearOfEnd; step <= endGap + clearOfEnd; step++) {
    const seen = [gather(end + step, 0, 2), gather(end - step, asideNear, -1), gather(end - step, -asideNear, -1)];
    if (!seen.every(Boolean)) return null;
  }
  return Math.hypot(...sum) / (2 * (endGap + 1));
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

function spreadOf(values: readonly number[]): number {
  const middle = median(values);
  return 1.4826 * median(values.map((value) => Math.abs(value - middle)));
}
