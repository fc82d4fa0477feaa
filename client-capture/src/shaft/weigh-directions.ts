import { seenOdds } from "./seen-odds.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

const bins = 96;
const lowest = -8;
const perNat = 3;
const histogram = new Uint16Array(bins);

/**
 * Likelihood of the picture for each direction of the sweep, against "no shaft there" as 1; 1 where nobody looked. `clutter` (`clutterLevel`) is
 * what has to be surpassed. `novelty`, 0 to 1 for each direction: how
 * far what was seen there is more than another look at the same still thing. A line's peak speaks for the directions about it as well: where
 * exactly it comes out among them is chance, and the fit's business.
 */
export function weighDirections(
  evidence: Float32Array,
  side: Float32Array,
  novelty: Float32Array,
  clutter: number,
  tuning: ShaftTuning,
  into: Float32Array,
): void {
  const reach = Math.round((tuning.peakReach * evidence.length) / 360);
  for (let i = 0; i < evidence.length; i++) {
    const value = evidence[i] as number;
    if (Number.isNaN(value)) {
      into[i] = 1;
      continue;
    }
    const height = tuning.evidenceWeight * (peakAbout(evidence, i, reach) - clutter);
    const gain = (novelty[i] as number) * Math.min(height, tuning.evidenceCap) + (side[i] as number);
    into[i] = seenOdds(gain, tuning);
  }
}

function strongestOf(evidence: Float32Array): number {
  let strongest = 0;
  let peak = -Infinity;
  for (let i = 0; i < evidence.length; i++) {
    const value = evidence[i] as number;
    if (!(value > peak)) continue;
    peak = value;
    strongest = i;
  }
  return strongest;
}

/** The greatest evidence within `reach` directions of one. */
function peakAbout(evidence: Float32Array, direction: number, reach: number): number {
  const count = evidence.length;
  let peak = -Infinity;
  for (let k = -reach; k <= reach; k++) {
    const value = evidence[(direction + k + count) % count] as number;
    if (value > peak) peak = value;
  }
  return peak;
}

/**
 * Evidence that clutter reaches by itself, measured by the picture: a level that a tenth of all directions reach, and some more. `evidence` is what was
 * last seen of each direction; NaN where nobody ever looked. `rodAlong`: without those about the strongest line and its opposite, for a rod is seen in many.
 */
export function clutterLevel(evidence: Float32Array, rodAlong: boolean, tuning: ShaftTuning): number {
  histogram.fill(0);
  const strongest = rodAlong ? strongestOf(evidence) : 0;
  const half = evidence.length / 2;
  const apart = rodAlong ? (tuning.clutterApart * evidence.length) / 360 : -1;
  let looked = 0;
  for (let i = 0; i < evidence.length; i++) {
    const value = evidence[i] as number;
    if (Number.isNaN(value)) continue;
    const away = Math.abs(i - strongest) % half;
    if (Math.min(away, half - away) <= apart) continue;
    looked++;
    const bin = Math.floor((value - lowest) * perNat);
    const at = bin < 0 ? 0 : bin >= bins ? bins - 1 : bin;
    histogram[at] = (histogram[at] as number) + 1;
  }
  let above = 0;
  let bin = bins - 1;
  while (bin > 0 && above < looked * 0.1) above += histogram[bin--] as number;
  const level = lowest + bin / perNat;
  return Math.max(
    tuning.clutterLeast,
    Math.min(tuning.clutterMost, tuning.clutterScale * level + tuning.clutterMargin),
  );
}
