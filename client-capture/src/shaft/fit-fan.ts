import type { FanChange } from "./fan-change.ts";
import { fitStraight, makeStationReadings } from "./fit-straight.ts";
import { placeIn } from "./place-in.ts";
import { fanBreadth, type Fan } from "./sweep-fans.ts";

/** What both edges of a fan say of the shaft half-way through the exposure. Pixels of the `FanChange`, radians. */
export interface FanFit {
  /** A point of the middle line. */
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly angleSd: number;
  readonly acrossSd: number;
  /** Between the two edges: how far the shaft turned meanwhile. Negative where they run together outwards, as no fan does. */
  readonly turn: number;
  /** How far from the hands both edges meet, pixels along the middle, with the shaft's own breadth taken off; negative behind them. */
  readonly meet: number;
  /** Root mean square distance of the stations from their edges. */
  readonly residual: number;
  /** Share of the stations that carry both edges, 0 to 1. */
  readonly support: number;
}

const stations = 16;
const lefts = makeStationReadings(stations);
const rights = makeStationReadings(stations);
/** A quarter of a grey level over so many pixels is the least that a station must stand out by. */
const leastSum = 6;
/** Breadth of a shaft that does not turn, pixels. */
const ownBreadth = 2;
let profile = new Float64Array(0);

/**
 * Reads at stations along a fan where it begins and ends across, and puts a straight line through the beginnings and another through the ends. A shaft that turns evenly stands
 * half-way between them at half of the exposure. (`x`, `y`): the hands. Null where too few stations stand out.
 */
export function fitFan(
  change: FanChange,
  x: number,
  y: number,
  torso: number,
  fan: Fan,
  nearest: number,
): FanFit | null {
  const { angle, offset, end } = fan;
  const from = nearest * torso;
  const step = (end - from) / stations;
  for (let i = 0; i < stations; i++) {
    const along = from + (i + 0.5) * step;
    const breadth = fanBreadth(fan.half, along, torso);
    lefts.along[i] = rights.along[i] = along;
    const stands = readAcross(change, x, y, fan, along - step / 2, step, breadth) && findBox(breadth);
    // Far out a fan is broad and faint, and its edges are the less exact for it.
    const weight = stands ? 30 / (1 + (breadth / 6) ** 2) : 0;
    lefts.strength[i] = rights.strength[i] = weight;
    lefts.found[i] = box.from + offset;
    rights.found[i] = box.to + offset;
  }
  const middle = (from + end) / 2;
  const left = fitStraight(lefts, middle);
  const right = fitStraight(rights, middle);
  if (left === null || right === null) return null;
  const across = (left.across + right.across) / 2;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return {
    x: x + cos * middle - sin * across,
    y: y + sin * middle + cos * across,
    angle: angle + (Math.atan(left.turn) + Math.atan(right.turn)) / 2,
    angleSd: Math.hypot(left.angleSd, right.angleSd) / 2,
    acrossSd: Math.hypot(left.acrossSd, right.acrossSd) / 2,
    turn: Math.atan(right.turn) - Math.atan(left.turn),
    meet: middle - (right.across - left.across - ownBreadth) / Math.max(1e-3, right.turn - left.turn),
    residual: Math.max(left.residual, right.residual),
    support: Math.min(left.support, right.support),
  };
}

/** Reads what has come across a fan, its sign taken off, as far out as a fan half as broad again and its sides go. False where that lies outside of the picture. */
function readAcross(
  change: FanChange,
  x: number,
  y: number,
  { angle, offset, sign }: Fan,
  from: number,
  length: number,
  breadth: number,
): boolean {
  const reach = reachOf(breadth);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  if (profile.length < 2 * reach + 1) profile = new Float64Array(2 * reach + 1);
  const reads = Math.max(1, Math.round(length));
  let outside = 0;
  for (let across = -reach; across <= reach; across++) {
    let sum = 0;
    for (let read = 0; read < reads; read++) {
      const along = from + ((read + 0.5) * length) / reads;
      const aside = across + offset;
      const at = placeIn(change, x + cos * along - sin * aside, y + sin * along + cos * aside);
      if (at < 0) outside++;
      else sum += sign * (change.values[at] as number);
    }
    profile[across + reach] = sum / reads;
  }
  return outside < reads * reach;
}

const reachOf = (breadth: number): number => Math.ceil(2.6 * breadth + 4);

/** Where the fan was found to begin and to end across. */
const box = { from: 0, to: 0 };

/** The stretch of the profile that stands out most over half of its own height. False where none does. */
function findBox(breadth: number): boolean {
  const reach = reachOf(breadth);
  const read = profile.subarray(0, 2 * reach + 1);
  // So many pixels reach it: a spike is no height.
  const height = Float64Array.from(read).sort()[read.length - 1 - Math.floor(breadth)] ?? 0;
  const level = Math.max(2, height / 2);
  let sum = 0;
  let start = 0;
  let most = 0;
  for (let i = 0; i < read.length; i++) {
    sum += Math.min(read[i] as number, 2 * height) - level;
    if (sum <= 0) {
      sum = 0;
      start = i + 1;
    } else if (sum > most) {
      most = sum;
      box.from = start - reach - 0.5;
      box.to = i - reach + 0.5;
    }
  }
  return most >= leastSum;
}
