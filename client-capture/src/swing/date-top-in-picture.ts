import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { timeAbout, type HandsMoment } from "./hands-path.ts";
import { pictureTuning } from "./picture-tuning.ts";

/** The middle of the time that the hands spend at their highest; the club turns round some time while they are about there. */
export function dateTopInPicture(path: readonly HandsMoment[], top: number): CheckpointTime {
  const { topFlat, topDepth, topShare } = pictureTuning;
  const [from, to] = timeAbout(path, top, topFlat);
  const [up, down] = timeAbout(path, top, topDepth);
  return { checkpoint: "top", t: milliseconds((from + to) / 2), sd: Math.max(10, topShare * (down - up)) };
}
