import type { Channel } from "./stick-channel.ts";
import { stationTuning } from "./station-tuning.ts";

/** Both edges of a bright bar in one profile across it, as distances from the profile's middle along its direction. */
export interface Edges {
  readonly first: number;
  readonly second: number;
  /** How far the bar stands out of the ground beside it, in sds of the ground. */
  readonly contrast: number;
}

/**
 * The bar nearest to the middle of a profile: its brightest place stands out, and each edge is where the brightness has fallen halfway to the ground on
 * that side, between samples. Null where nothing stands out, the bar is too wide or too narrow, or the profile leaves the picture.
 */
export function findEdges(
  channel: Channel,
  middle: { readonly x: number; readonly y: number },
  across: { readonly x: number; readonly y: number },
  reach: number,
): Edges | null {
  const { profileDensity, widest, narrowest, leastContrast } = stationTuning;
  const half = Math.round(reach * profileDensity);
  const samples: number[] = [];
  for (let step = -half; step <= half; step++) {
    const by = step / profileDensity;
    const value = channel(middle.x + by * across.x, middle.y + by * across.y);
    if (value === null) return null;
    samples.push(value);
  }
  const window = profileDensity;
  let peak = -1;
  let best = -Infinity;
  for (let index = window; index < samples.length - window; index++) {
    const value = samples[index] ?? 0;
    // A little weight to the middle, so that of two like bars the nearer one wins.
    const score = value - (Math.abs(index - half) / profileDensity) * stationTuning.nearerWins;
    if (score > best) {
      best = score;
      peak = index;
    }
  }
  const top = samples[peak] ?? 0;
  const before = lowest(samples, peak, -1, widest * profileDensity);
  const after = lowest(samples, peak, 1, widest * profileDensity);
  const contrast = top - Math.max(before, after);
  if (contrast < leastContrast) return null;
  const first = crossing(samples, peak, -1, (top + before) / 2);
  const second = crossing(samples, peak, 1, (top + after) / 2);
  if (first === null || second === null) return null;
  const width = (second - first) / profileDensity;
  if (width > widest || width < narrowest) return null;
  return {
    first: (first - half) / profileDensity,
    second: (second - half) / profileDensity,
    contrast,
  };
}

/** The mean of the darkest third on one side: the ground there, whatever single blades of grass do. */
function lowest(samples: readonly number[], peak: number, way: -1 | 1, most: number): number {
  const side: number[] = [];
  for (let index = peak + way; index >= 0 && index < samples.length && side.length < most; index += way) {
    side.push(samples[index] ?? 0);
  }
  const dark = side.toSorted((a, b) => a - b).slice(0, Math.max(1, Math.ceil(side.length / 3)));
  return dark.reduce((sum, value) => sum + value, 0) / dark.length;
}

function crossing(samples: readonly number[], peak: number, way: -1 | 1, level: number): number | null {
  for (let index = peak; index + way >= 0 && index + way < samples.length; index += way) {
    const here = samples[index] ?? 0;
    const next = samples[index + way] ?? 0;
    if (here >= level && next < level) return index + (way * (here - level)) / (here - next);
  }
  return null;
}
