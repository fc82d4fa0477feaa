import { spreadAt, widestLean } from "./view-shaft.ts";

/** What is known of the lean beforehand, radians: from the motion, or from nothing but that clubs are held across. */
export interface LeanPrior {
  readonly mean: number;
  readonly sd: number;
}

/** The lean on one side of the widest, as a share of the whole and its first two moments together with the miss in spread. */
export interface LeanSide {
  /** Unnormalised mass, comparable between the two sides. */
  readonly mass: number;
  readonly mean: number;
  readonly variance: number;
  /** Mean, variance of observed less expected spread, and its covariance with the lean. */
  readonly missMean: number;
  readonly missVariance: number;
  readonly missLean: number;
}

export interface LeanQuestion {
  /** Observed spread, radians, and one sd of its miss with every source of error counted. */
  readonly spread: number;
  readonly sd: number;
  readonly length: number;
  readonly distance: number;
  readonly prior: LeanPrior | null;
}

const nodes = 41;
const reach = 5;

/**
 * The lean towards (`-1`) or away from (`1`) the camera, given how wide the shaft is seen. The spread says nothing of the lean, to first order,
 * where the shaft is square to the line of sight, so the moments are summed over the lean itself (trapezium rule on a grid as wide as the answer)
 * and not taken from a derivative. Without a prior every lean is as likely as another.
 */
export function leanPosterior(side: -1 | 1, question: LeanQuestion): LeanSide {
  const { spread, sd, length, distance, prior } = question;
  const widest = widestLean(length, distance);
  const end = side * (Math.PI / 2);
  const mode = leanForSpread(side, spread, length, distance);
  const slope = Math.abs(spreadAt(mode + 1e-4, length, distance) - spreadAt(mode - 1e-4, length, distance)) / 2e-4;
  const bend = Math.max(0.05, spreadAt(widest, length, distance));
  const width = Math.min(sd / Math.max(slope, 1e-6), Math.sqrt((2 * sd) / bend) + sd / bend);
  const from = Math.max(Math.min(widest, end), mode - reach * width);
  const to = Math.min(Math.max(widest, end), mode + reach * width);
  const step = (to - from) / (nodes - 1);

  let mass = 0;
  const sums = [0, 0, 0, 0, 0] as [number, number, number, number, number];
  for (let node = 0; node < nodes; node++) {
    const lean = from + node * step;
    const miss = spread - spreadAt(lean, length, distance);
    const offPrior = prior ? (lean - prior.mean) / prior.sd : 0;
    const edge = node === 0 || node === nodes - 1 ? 0.5 : 1;
    const weight = edge * step * Math.exp(-0.5 * ((miss / sd) ** 2 + offPrior ** 2)) + 1e-300;
    mass += weight;
    sums[0] += weight * lean;
    sums[1] += weight * miss;
    sums[2] += weight * lean * lean;
    sums[3] += weight * miss * miss;
    sums[4] += weight * lean * miss;
  }
  const mean = sums[0] / mass;
  const missMean = sums[1] / mass;
  return {
    mass,
    mean,
    missMean,
    variance: Math.max(0, sums[2] / mass - mean * mean),
    missVariance: Math.max(0, sums[3] / mass - missMean * missMean),
    missLean: sums[4] / mass - mean * missMean,
  };
}

/** Both sides as one, where the lean's sign is not kept apart. */
export function joinSides(a: LeanSide, b: LeanSide): LeanSide {
  const mass = a.mass + b.mass;
  const share = a.mass / mass;
  const mix = (x: number, y: number): number => share * x + (1 - share) * y;
  const between = share * (1 - share);
  return {
    mass,
    mean: mix(a.mean, b.mean),
    missMean: mix(a.missMean, b.missMean),
    variance: mix(a.variance, b.variance) + between * (a.mean - b.mean) ** 2,
    missVariance: mix(a.missVariance, b.missVariance) + between * (a.missMean - b.missMean) ** 2,
    missLean: mix(a.missLean, b.missLean) + between * (a.mean - b.mean) * (a.missMean - b.missMean),
  };
}

/** The lean on one side under which the shaft spans `spread`; the widest where it never spans that much. */
export function leanForSpread(side: -1 | 1, spread: number, length: number, distance: number): number {
  // The head lies on its own line of sight at the shaft's length from the grip: law of sines in the triangle lens, grip, head.
  const sine = (distance * Math.sin(spread)) / length;
  if (sine >= 1) return widestLean(length, distance);
  const atHead = side === 1 ? Math.asin(sine) : Math.PI - Math.asin(sine);
  const lean = Math.PI / 2 - (spread + atHead);
  return Math.min(Math.PI / 2, Math.max(-Math.PI / 2, lean));
}
