import { dateLowestHead } from "./date-lowest-head.ts";
import { timeAbout, timeAt, type HandsMoment } from "./hands-path.ts";
import type { HeadInPicture } from "./heads-in-picture.ts";
import { pictureTuning } from "./picture-tuning.ts";
import type { StartOfGrowth } from "./start-of-growth.ts";

/** When the club met the ball: by its head where that is seen about then, else, far less surely, by the hands. `top` and `low` are the hands', indices into their path. */
export function impactInPicture(
  path: readonly HandsMoment[],
  heads: readonly HeadInPicture[],
  top: number,
  low: number,
): StartOfGrowth {
  const { from, to, pointsDown } = pictureTuning.impact;
  const topT = timeAt(path, top);
  const down = timeAt(path, low) - topT;
  const passing = heads.filter(
    ({ t, angle }) => t >= topT + from * down && t <= topT + to * down && Math.sin(angle) >= pointsDown,
  );
  return dateLowestHead(passing, down) ?? impactByHands(topT, timeAbout(path, low, pictureTuning.lowFlat));
}

/** Of two pictures that show the hands equally low neither is the lowest. */
function impactByHands(topT: number, [from, to]: readonly [number, number]): StartOfGrowth {
  const { afterLow, share, least } = pictureTuning.impact;
  const lowT = (from + to) / 2;
  return { t: lowT + afterLow * (lowT - topT), sd: Math.max(least, share * (lowT - topT)) };
}
