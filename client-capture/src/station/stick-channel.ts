import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { Picture } from "../picture/picture.ts";
import { sampleColour, type Colour } from "./sample-colour.ts";
import { stationTuning } from "./station-tuning.ts";

/** One number for each place of a picture, in which a stick stands out: high on it, and one sd of the ground beside it is 1. Null outside. */
export type Channel = (x: number, y: number) => number | null;

export interface StickChannel {
  readonly channel: Channel;
  /** The colour at a place in axes in which the ground has mean 0 and a spread of 1 every way; null outside. */
  readonly whitened: (x: number, y: number) => Colour | null;
  readonly near: Point<"image">;
  readonly far: Point<"image">;
  /** How far the stick stands out, in sds of the ground. */
  readonly contrast: number;
}

/**
 * The mixture of brightness and colour in which a stick near a rough line differs most from the ground beside it (Fisher's linear discriminant), and
 * a better rough line: both ends are moved sideways by whole pixels until the difference is greatest. Null where the line leaves the picture.
 */
export function stickChannel(
  picture: Picture,
  near: Point<"image">,
  far: Point<"image">,
  reach: number,
): StickChannel | null {
  const length = Math.hypot(far.x - near.x, far.y - near.y);
  const across = { x: -(far.y - near.y) / length, y: (far.x - near.x) / length };
  const count = Math.min(60, Math.max(8, Math.round(length / 2)));
  const aside = stationTuning.asideReach;
  const widest = Math.ceil(reach) + aside;
  // Colours on a grid that goes with the rough line: along it by `count`, across it pixel by pixel.
  const grid: (Colour | null)[][] = Array.from({ length: count }, (_, index) => {
    const share = (index + 0.5) / count;
    const x = near.x + share * (far.x - near.x);
    const y = near.y + share * (far.y - near.y);
    return Array.from({ length: 2 * widest + 1 }, (__, step) =>
      sampleColour(picture, x + (step - widest) * across.x, y + (step - widest) * across.y),
    );
  });
  const whiten = groundWhitener(grid);
  if (!whiten) return null;
  const white = grid.map((row) => row.map((colour) => colour && whiten(colour)));

  let best: {
    readonly score: number;
    readonly difference: Colour;
    readonly atNear: number;
    readonly atFar: number;
  } | null = null;
  const limit = Math.ceil(reach);
  for (let atNear = -limit; atNear <= limit; atNear++) {
    for (let atFar = -limit; atFar <= limit; atFar++) {
      const difference = differenceAlong(white, widest, aside, (share) => atNear + share * (atFar - atNear));
      if (!difference) continue;
      const score = Math.hypot(...difference);
      if (!best || score > best.score) best = { score, difference, atNear, atFar };
    }
  }
  if (!best) return null;
  const { difference, atNear, atFar, score } = best;
  const unit = difference.map((value) => value / score);
  const whitened = (x: number, y: number): Colour | null => {
    const colour = sampleColour(picture, x, y);
    return colour && whiten(colour);
  };
  return {
    contrast: score,
    whitened,
    near: imagePoint(near.x + atNear * across.x, near.y + atNear * across.y),
    far: imagePoint(far.x + atFar * across.x, far.y + atFar * across.y),
    channel: (x, y) => {
      const colour = whitened(x, y);
      if (!colour) return null;
      const [a, b, c] = colour;
      return a * (unit[0] ?? 0) + b * (unit[1] ?? 0) + c * (unit[2] ?? 0);
    },
  };
}

/** Mean colour on the moved line less the mean colour on both sides of it. */
function differenceAlong(
  white: readonly (readonly (Colour | null)[])[],
  middle: number,
  aside: number,
  shiftAt: (share: number) => number,
): Colour | null {
  const sum: [number, number, number] = [0, 0, 0];
  let count = 0;
  for (const [index, row] of white.entries()) {
    const at = middle + Math.round(shiftAt((index + 0.5) / white.length));
    const on = row[at];
    const left = row[at - aside];
    const right = row[at + aside];
    if (!on || !left || !right) continue;
    count++;
    for (let channel = 0; channel < 3; channel++) {
      sum[channel] = (sum[channel] ?? 0) + (on[channel] ?? 0) - ((left[channel] ?? 0) + (right[channel] ?? 0)) / 2;
    }
  }
  return count * 2 < white.length ? null : [sum[0] / count, sum[1] / count, sum[2] / count];
}

/** Takes a colour to axes in which the ground has a spread of 1 every way. */
function groundWhitener(grid: readonly (readonly (Colour | null)[])[]): ((colour: Colour) => Colour) | null {
  const colours = grid.flat().filter((colour) => colour !== null);
  if (colours.length < 30) return null;
  const median = [0, 1, 2].map((channel) => middleOf(colours.map((colour) => colour[channel] ?? 0)));
  const away = (colour: Colour): number[] => colour.map((value, channel) => value - (median[channel] ?? 0));
  // The nearer half of the colours is ground for sure; a stick, a shoe or a line on the mat is not among it.
  const sizes = colours.map((colour) => Math.hypot(...away(colour)));
  const limit = middleOf(sizes) * 1.5;
  const ground = colours.filter((_, index) => (sizes[index] ?? 0) <= limit).map(away);
  const covariance = Matrix.eye(3).mul(stationTuning.leastGroundSd ** 2);
  for (const row of ground) {
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        covariance.set(i, j, covariance.get(i, j) + ((row[i] ?? 0) * (row[j] ?? 0)) / ground.length);
      }
    }
  }
  const factor = new CholeskyDecomposition(covariance);
  if (!factor.isPositiveDefinite()) return null;
  const lower = factor.lowerTriangularMatrix;
  return (colour) => {
    const [a = 0, b = 0, c = 0] = away(colour);
    const first = a / lower.get(0, 0);
    const second = (b - lower.get(1, 0) * first) / lower.get(1, 1);
    return [first, second, (c - lower.get(2, 0) * first - lower.get(2, 1) * second) / lower.get(2, 2)];
  };
}

const middleOf = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
