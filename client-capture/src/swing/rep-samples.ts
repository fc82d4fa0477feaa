import { dateSetOff } from "./date-set-off.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { restBefore } from "./rest-before.ts";
import type { Rest } from "./rest.ts";
import type { Segment } from "./segment-reps.ts";
import { swingTuning } from "./swing-tuning.ts";

/** The samples of one rep from its rest (or the turn before it) to its end, and what stood still before. */
export interface RepSamples {
  readonly samples: readonly FollowedSample[];
  readonly rest: Rest | null;
  /** The rest again where it was at the ball; null where the club rested forward of it. */
  readonly address: Rest | null;
  /** When the club set off going back, milliseconds, and one standard deviation of it. */
  readonly setOffAt: number;
  readonly setOffSd: number;
}

/**
 * Cuts a rep out of the samples kept. It sets off where the swing angle last left its resting value for good; without a rest,
 * where the club turned forward of the ball.
 */
export function repSamples(kept: readonly FollowedSample[], segment: Segment): RepSamples | null {
  const firstTop = segment.tops[0];
  if (firstTop === undefined) return null;
  const before = kept.filter(({ t }) => t >= segment.after && t <= firstTop.t);
  const found = restBefore(before, segment.leftLowAt - swingTuning.rest.before);
  const rest = found?.rest ?? null;
  const turnedAt = segment.forwardBefore?.t ?? segment.leftLowAt;
  const { t: setOffAt, sd: setOffSd } =
    found === null
      ? { t: Math.min(turnedAt, segment.leftLowAt), sd: swingTuning.setOff.turnSd }
      : dateSetOff(before, found, firstTop.t);
  const samples = kept.filter(
    (sample) =>
      sample.t >= Math.max(setOffAt - 400, rest?.from ?? setOffAt) &&
      sample.t <= segment.endedAt + swingTuning.afterEnd,
  );
  return { samples, rest, address: found?.atBall === true ? rest : null, setOffAt, setOffSd };
}
