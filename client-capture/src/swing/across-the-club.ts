import type { HeadInPicture } from "./heads-in-picture.ts";
import type { PlaceAt } from "./leave-rest.ts";
import { median } from "./median.ts";
import { pictureTuning } from "./picture-tuning.ts";

/**
 * The head's places across the club as it lay from `from` to `to`, and along it, metres. Across, a line is found to a fraction of a pixel; along it, before a busy
 * background, the end of a thin line is found now here, now there: what a head moves along counts the less the more it scatters so meanwhile.
 */
export function acrossTheClub(heads: readonly HeadInPicture[], from: number, to: number): PlaceAt[] {
  const lying = heads.filter(({ t }) => t >= from && t <= to);
  const [cos, sin] = [
    median(lying.map(({ angle }) => Math.cos(angle))),
    median(lying.map(({ angle }) => Math.sin(angle))),
  ];
  const along = ({ x, y }: HeadInPicture): number => cos * x + sin * y;
  const ends = lying.map(along);
  const scatter = median(ends.map((end) => Math.abs(end - median(ends))));
  const counts = Math.min(1, pictureTuning.endScatters / scatter);
  return heads.map((head) => ({ t: head.t, at: [cos * head.y - sin * head.x, counts * along(head)] }));
}
