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

/** The ground may differ from one side of an end to the other by so many of its sds or by this share of the fall. Lower: takes fewer ends. */
const mostUneven = { sds: 1.5, share: 0.2 };

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
  const sideways: number[] = [];
  for (let along = start; along <= stop + smear + endGap; along++) {
    const looked = lookAcross(seen.channel, place(along), across);
    if (looked === null) break;
    sideways.push(looked.left - looked.right);
    values.push(looked.on - (looked.left + looked.right) / 2);
  }
  const noEnd = (along: number, runsOn: boolean): FoundEnd => ({
    at: place(along),
    isEnd: false,
    sd: stationTuning.endGap,
    runsOn,
  });
  const level = endShare * contrast;
  const step = greatestFall(values);
  const last = values.findLastIndex((value) => value >= level);
  if (step === null || step.high - step.low < level) {
    const goesOn = median(values.slice(-2 * smear)) >= level;
    return noEnd(start + Math.max(0, last), goesOn && start + values.length > stop);
  }
  if (start + step.at > stop) return noEnd(length, true);
  const { at, high, low, noise } = step;
  const first = Math.max(0, Math.round(at) - smear);
  const until = Math.min(values.length - 1, Math.round(at) + smear);
  let area = 0;
  for (let index = first; index <= until; index++) area += ((values[index] ?? 0) - low) / (high - low);
  // The samples stand for a pixel of length each, and half of one lies before the first.
  const end = start + first - 0.5 + area;
  // Neighbouring samples share pixels: two of them count for one.
  const sd = (noise * Math.sqrt(2 * (until - first + 1))) / (high - low);
  const strange = strangeness(seen.whitened, place, end, across);
  // Beside a post or a shoe the bar seems to fall before it ends: what is compared with is then not the ground on one of its sides.
  const uneven = Math.abs(mean(sideways.slice(first, until + 1)));
  const isPlain =
    Math.abs(end - start - at) < smear &&
    low < level &&
    uneven < Math.max(mostUneven.sds, mostUneven.share * (high - low));
  if (!isPlain || strange === null || strange > hiddenStep) return noEnd(start + at, false);
  return { at: place(end), isEnd: true, sd, runsOn: false };
}

/**
 * The one fall from a higher level to a lower one that explains the values best (least squares over where it lies, both levels being means). Grass over
 * the stick and bright blades beyond it, a few pixels each, do not move it. Null for too few values or where nothing falls.
 */
function greatestFall(
  values: readonly number[],
): { readonly at: number; readonly high: number; readonly low: number; readonly noise: number } | null {
  const { endGap } = stationTuning;
  let sum = 0;
  let squares = 0;
  for (const value of values) {
    sum += value;
    squares += value * value;
  }
  let before = 0;
  let best: { at: number; high: number; low: number; noise: number } | null = null;
  for (const [index, value] of values.entries()) {
    before += value;
    const count = index + 1;
    const beyond = values.length - count;
    if (count < endGap || beyond < endGap) continue;
    const high = before / count;
    const low = (sum - before) / beyond;
    const left = squares - count * high * high - beyond * low * low;
    const noise = Math.sqrt(Math.max(0, left) / values.length);
    if (high > low && (!best || noise < best.noise)) best = { at: index + 0.5, high, low, noise };
  }
  return best;
}

/** Brightness on the line, and of the ground to either side of it; null outside of the picture. */
function lookAcross(
  channel: StickChannel["channel"],
  at: Point<"image">,
  across: { readonly x: number; readonly y: number },
): { readonly on: number; readonly left: number; readonly right: number } | null {
  const seen = (aside: readonly number[]): number | null => {
    const values = aside.map((by) => channel(at.x + by * across.x, at.y + by * across.y));
    const within = values.filter((value) => value !== null);
    return within.length === 0 ? null : mean(within);
  };
  const on = seen([-0.6, 0, 0.6]);
  const left = seen([-asideFar, -asideNear]) ?? seen([asideNear, asideFar]);
  const right = seen([asideNear, asideFar]) ?? left;
  return on === null || left === null || right === null ? null : { on, left, right };
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

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
