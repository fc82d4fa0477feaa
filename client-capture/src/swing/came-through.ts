import type { RepSamples } from "./rep-samples.ts";
import type { Segment } from "./segment-reps.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Whether a club that was not seen at the ball must have passed it: it was seen before, up behind it, and is seen soon after coming up on the other side. */
export function cameThrough({ samples }: RepSamples, { tops }: Segment): boolean {
  const { passesLow, longestUnfollowed } = swingTuning;
  const lastTop = tops[tops.length - 1]?.t ?? Infinity;
  const seen = samples.flatMap(({ t, tracked, angle }) => (tracked && angle !== null ? [{ t, angle }] : []));
  const ahead = seen.findIndex(({ t, angle }) => t > lastTop && angle < -passesLow);
  const [before, after] = [seen[ahead - 1], seen[ahead]];
  return (
    before !== undefined && after !== undefined && before.angle > passesLow && after.t - before.t <= longestUnfollowed
  );
}
