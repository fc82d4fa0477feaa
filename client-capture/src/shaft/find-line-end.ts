import type { Picture } from "../picture/picture.ts";
import { lumaAt } from "./luma-at.ts";
import { lineEndTuning } from "./shaft-tuning.ts";

/** Looks along a torso's length. */
const perTorso = 128;
/** No line is looked along farther than so many torso lengths. */
const farthest = 4;
const greys = 256;
/** Half of the stretch over which neighbouring looks are averaged, looks. */
const about = 1;

const contrast = new Float32Array(perTorso * farthest + 1);
/** How much the line stands out at each look, brighter or darker, neighbours averaged. */
const strength = new Float64Array(contrast.length);
const counts = new Uint16Array(greys);

/**
 * Where a thin line ends, at full resolution, from (x, y) along it; `end` is about where. It stands out from both of its sides as far as it goes, by about as much as on the way there, and
 * beyond its end nothing does. Null where it hardly stands out, or no such place is plain: something before it hides it, or something runs on beyond it.
 * `torso` in picture pixels. The scratch arrays are shared: one line at a time.
 */
export function findLineEnd(
  picture: Picture,
  { x, y, angle }: { readonly x: number; readonly y: number; readonly angle: number },
  end: number,
  torso: number,
): number | null {
  const tuning = lineEndTuning;
  const step = torso / perTorso;
  const looks = Math.round(end / step);
  const first = Math.max(about, Math.round(tuning.usualFrom * looks));
  const last = looks + Math.round(tuning.beyond * perTorso);
  if (last + about >= contrast.length) return null;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const aside = Math.max(tuning.leastAside, tuning.aside * torso);
  for (let i = first - about; i <= last + about; i++)
    contrast[i] = standsOut(picture, x + cos * step * i, y + sin * step * i, sin, cos, aside);
  for (let i = first; i <= last; i++) strength[i] = Math.abs(smoothed(i));
  const usual = usualContrast(first, Math.round(tuning.usualTo * looks));
  if (usual < tuning.leastContrast) return null;
  const from = Math.max(first, looks - Math.round(tuning.before * perTorso));
  let sum = 0;
  let most = 0;
  let at = from;
  for (let i = from; i <= last; i++) {
    sum += likeness(i, usual) - tuning.half;
    if (sum <= most) continue;
    most = sum;
    at = i + 1;
  }
  const near = Math.round(tuning.plainNear * perTorso);
  const far = Math.round(tuning.plainFar * perTorso);
  if (at - far < first || at + far > last) return null;
  const isPlain =
    meanLikeness(at - far, at - near, usual) >= tuning.leastBefore &&
    meanLikeness(at + near, at + far, usual) <= tuning.mostBeyond;
  return isPlain ? at * step : null;
}

/** By how much the place is brighter, or darker, than both sides; 0 where it lies between them. */
function standsOut(picture: Picture, x: number, y: number, sin: number, cos: number, aside: number): number {
  const seen = (by: number): number => lumaAt(picture, x - sin * by, y + cos * by);
  const on = (seen(-1) + seen(0) + seen(1)) / 3;
  const left = on - (seen(-aside) + seen(-aside - 1)) / 2;
  const right = on - (seen(aside) + seen(aside + 1)) / 2;
  return left * right > 0 ? Math.sign(left) * Math.min(Math.abs(left), Math.abs(right)) : 0;
}

/** The middle one of how much it stands out, in whole grey levels. */
function usualContrast(from: number, to: number): number {
  counts.fill(0);
  let total = 0;
  for (let i = from; i < to; i++) {
    const grey = Math.min(greys - 1, Math.round(strength[i] as number));
    counts[grey] = (counts[grey] as number) + 1;
    total++;
  }
  let below = 0;
  for (let grey = 0; grey < greys; grey++) {
    below += counts[grey] as number;
    if (2 * below >= total && total > 0) return grey;
  }
  return 0;
}

function smoothed(i: number): number {
  let sum = 0;
  for (let by = -about; by <= about; by++) sum += contrast[i + by] as number;
  return sum / (2 * about + 1);
}

/** 1 where the line stands out as it does as a rule, 0 where it does not. */
const likeness = (i: number, usual: number): number => Math.min(1, (strength[i] as number) / usual);

function meanLikeness(from: number, to: number, usual: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += likeness(i, usual);
  return sum / Math.max(1, to - from);
}
