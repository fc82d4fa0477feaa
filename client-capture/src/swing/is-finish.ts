import type { CheckpointTime } from "./checkpoint-time.ts";
import { areHandsHigh } from "./lead-hand.ts";
import type { RepSamples } from "./rep-samples.ts";
import type { Segment } from "./segment-reps.ts";
import { swingTuning } from "./swing-tuning.ts";

/**
 * Whether a movement that came through the low was none: nobody strikes a ball with the hands about the shoulders. At the finish a club whose lean is taken the wrong way round seems to hang there.
 * The pose of fast hands comes late, so that a club which was seen level on its way is believed all the same.
 */
export function isFinish({ samples }: RepSamples, { passedLowAt }: Segment, times: readonly CheckpointTime[]): boolean {
  if (times.some(({ checkpoint }) => checkpoint === "shaft-level-back" || checkpoint === "shaft-level-down"))
    return false;
  const high = samples.flatMap(({ t, shaft, leadShoulderZ }) =>
    shaft === null || leadShoulderZ === null || Math.abs(t - passedLowAt) > swingTuning.aboutTurn
      ? []
      : [areHandsHigh(shaft, leadShoulderZ)],
  );
  return high.filter((isHigh) => isHigh).length > high.length / 2;
}
