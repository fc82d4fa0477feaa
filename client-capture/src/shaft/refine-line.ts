import type { Picture } from "../picture/picture.ts";
import { fitStepped, type SteppedFit } from "./fit-stepped.ts";
import { fitStraight, makeStationReadings, type StraightFit } from "./fit-straight.ts";
import { lumaAt, lumaInside } from "./luma-at.ts";

/** A straight stretch in the picture: a point on it, its direction, and where along the direction it begins and ends. In pixels. */
export interface LineGuess {
  x: number;
  y: number;
  angle: number;
  from: number;
  to: number;
}

/** What the fit gives, in pixels and radians; `acrossSd` is that of the line's place at (x, y). */
export interface LineFit {
  x: number;
  y: number;
  angle: number;
  angleSd: number;
  acrossSd: number;
  /** Root mean square distance of the stations from the line. */
  residual: number;
  /** Stations that carry the line, as a share of all, 0 to 1. */
  support: number;
  /** How far aside a rod lies that ends on the way, pixels; 0 where none was told apart. */
  step: number;
  /** Mean contrast of the carrying stations, grey levels, positive where the line is brighter than both sides. */
  contrast: number;
}

const stations = 64;
/** Half width of the strip that is searched for the line, torso lengths: narrower from round to round, but not so narrow that a rod beside it gets lost. */
const nearness = (round: number, beside: number): number =>
  Math.max(round === 0 ? 0.05 : round === 1 ? 0.03 : 0.02, Math.min(0.05, 1.2 * beside));
const profileReach = 16;
const profile = new Float64Array(2 * profileReach + 1);
const readings = makeStationReadings(stations);

/**
 * Fits a straight line to the middles of a thin thing near `guess`: at stations along it the profile across is read at full resolution, its
 * two edges give the middle to a fraction of a pixel, and a weighted, outlier-proof least squares line goes through the middles. Colour, which is seen at half the size, has no say in it.
 * `beside`: how far beside the shaft a rod may lie, torso lengths, 0 where there is none (`fitStepped`).
 * Null where fewer than a fifth of the stations find anything. The scratch arrays are shared: one fit at a time.
 */
export function refineLine(picture: Picture, guess: LineGuess, torso: number, beside: number): LineFit | null {
  let { x, y, angle } = guess;
  const { from, to } = guess;
  const spread = Math.max(1, Math.min(2, torso / 160));
  const flank = Math.max(2, Math.min(5, Math.round((0.03 * torso) / spread)));
  let fit: LineFit | null = null;
  for (let round = 0; round < 3; round++) {
    const reach = Math.min(profileReach - flank, Math.max(2, Math.round((nearness(round, beside) * torso) / spread)));
    const cos = Math.cos(angle);
    const sin = Math.sin(angle);
    for (let i = 0; i < stations; i++) {
      const r = from + ((i + 0.5) / stations) * (to - from);
      readings.along[i] = r;
      readProfile(picture, x + cos * r, y + sin * r, cos, sin, spread, reach + flank);
      readings.strength[i] = findMiddle(i, reach, flank, spread);
    }
    const line =
      beside > 0
        ? fitStepped(readings, (from + to) / 2, beside * torso)
        : asStepped(fitStraight(readings, (from + to) / 2));
    if (line === null) return round === 0 ? null : fit;
    const middle = (from + to) / 2;
    const shift = line.across - line.turn * middle;
    x -= sin * shift;
    y += cos * shift;
    angle += Math.atan(line.turn);
    const { angleSd, acrossSd, residual, support, contrast, step } = line;
    fit = { x, y, angle, angleSd, acrossSd, residual, support, contrast, step };
  }
  return fit;
}

const asStepped = (line: StraightFit | null): SteppedFit | null => line && { ...line, step: 0 };

/** Brightness across the line at one station: mean of three samples along it, bilinear, `spread` pixels apart. */
function readProfile(
  picture: Picture,
  x: number,
  y: number,
  cos: number,
  sin: number,
  spread: number,
  reach: number,
): void {
  const far = reach * spread + 2;
  const inside = isWellInside(picture, x, y, far);
  for (let q = -reach; q <= reach; q++) {
    let sum = 0;
    for (let a = -1; a <= 1; a++) {
      const px = x - sin * q * spread + cos * a;
      const py = y + cos * q * spread + sin * a;
      sum += inside ? lumaInside(picture, px, py) : lumaAt(picture, px, py);
    }
    profile[q + profileReach] = sum / 3;
  }
}

const isWellInside = ({ width, height }: Picture, x: number, y: number, margin: number): boolean =>
  x >= margin && y >= margin && x <= width - margin && y <= height - margin;

/** Writes the middle of the strongest thin thing of the profile to `found[station]`; returns its signed contrast, 0 where there is none. */
function findMiddle(station: number, reach: number, flank: number, spread: number): number {
  const value = (q: number): number => profile[q + profileReach] as number;
  let best = 0;
  let bestAt = 0;
  let bestSign = 0;
  for (let q = -reach; q <= reach; q++) {
    const left = value(q) - value(q - flank);
    const right = value(q) - value(q + flank);
    if (left * right <= 0) continue;
    const contrast = Math.min(Math.abs(left), Math.abs(right)) * (1 - (0.7 * Math.abs(q)) / (reach + 1));
    if (contrast > best) {
      best = contrast;
      bestAt = q;
      bestSign = Math.sign(left);
    }
  }
  if (best < 1.5) return 0;
  const base = (value(bestAt - flank) + value(bestAt + flank)) / 2;
  let moment = 0;
  let mass = 0;
  for (let q = -flank; q <= flank; q++) {
    const lift = Math.max(0, bestSign * (value(bestAt + q) - base));
    moment += lift * q;
    mass += lift;
  }
  readings.found[station] = (bestAt + (mass > 0 ? moment / mass : 0)) * spread;
  return bestSign * best;
}
