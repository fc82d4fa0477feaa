import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { timeAt, upAt, type HandsMoment } from "./hands-path.ts";
import { pictureTuning } from "./picture-tuning.ts";

/** The middle of the time that the hands spend at their highest; the club turns round some time while they are about there. */
export function dateTopInPicture(path: readonly HandsMoment[], top: number): CheckpointTime {
  const { topFlat, topDepth, topShare } = pictureTuning;
  const [from, to] = within(path, top, topFlat);
  const [up, down] = within(path, top, topDepth);
  return { checkpoint: "top", t: milliseconds((from + to) / 2), sd: Math.max(10, topShare * (down - up)) };
}

/** First and last time of the stretch about the top in which the hands are within `depth` metres of it. */
function within(path: readonly HandsMoment[], top: number, depth: number): readonly [number, number] {
  const isHigh = (index: number): boolean =>
    index >= 0 && index < path.length && upAt(path, index) > upAt(path, top) - depth;
  let first = top;
  let last = top;
  while (isHigh(first - 1)) first--;
  while (isHigh(last + 1)) last++;
  return [timeAt(path, first), timeAt(path, last)];
}
