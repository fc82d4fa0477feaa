import type { HeadInPicture } from "./heads-in-picture.ts";
import type { PlaceAt } from "./leave-rest.ts";
import { median } from "./median.ts";
import { pictureTuning } from "./picture-tuning.ts";

/**
 * The places of the head of a club at rest across the club, and along it, metres. Across, a line is found to a fraction of a pixel; along it, before a busy
 * background, the end of a thin line is found now here, now there: what a head moves along counts the less the more it scatters so.
 */
export function acrossTheClub(heads: readonly HeadInPicture[]): PlaceAt[] {
  const cos = median(heads.map(({ angle }) => Math.cos(angle)));
  const sin = median(heads.map(({ angle }) => Math.sin(angle)));
  const ends = heads.map(({ x, y }) => cos * x + sin * y);
  const middle = median(ends);
  const scatter = median(ends.map((end) => Math.abs(end - middle)));
  const counts = Math.min(1, pictureTuning.endScatters / scatter);
  return heads.map(({ t, x, y }, index) => ({ t, at: [cos * y - sin * x, counts * (ends[index] ?? 0)] }));
}
