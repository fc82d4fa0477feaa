import { dateSetOff } from "./date-set-off.ts";
import { median } from "./median.ts";
import type { FollowedSample } from "./follow-swing.ts";
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
  const before = kept.filter(
    (sample) => sample.t >= segment.leftLowAt - 3000 && sample.t <= firstTop.t && sample.angle !== null,
  );
  const rest = lastRest(before);
  const turnedAt = segment.forwardBefore?.t ?? segment.leftLowAt;
  const { t: setOffAt, sd: setOffSd } =
    rest === null
      ? { t: Math.min(turnedAt, segment.leftLowAt), sd: swingTuning.setOff.turnSd }
      : dateSetOff(before, rest, firstTop.t);
  const samples = kept.filter(
    (sample) =>
      sample.t >= Math.max(setOffAt - 400, rest?.from ?? setOffAt) &&
      sample.t <= segment.endedAt + swingTuning.afterEnd,
  );
  const address = rest !== null && rest.angle > -swingTuning.flowForward ? rest : null;
  return { samples, rest, address, setOffAt, setOffSd };
}

function lastRest(samples: readonly FollowedSample[]): Rest | null {
  for (let end = samples.length - 1; end >= 0; end--) {
    const last = samples[end];
    if (last?.angle === undefined || last.angle === null || Math.abs(last.angle) > swingTuning.lowClub) continue;
    const span = samples.filter((sample) => sample.t <= last.t && sample.t > last.t - swingTuning.stillTime);
    const first = span[0];
    if (first === undefined || span.length < 4 || last.t - first.t < 0.7 * swingTuning.stillTime) continue;
    const angles = span.map((sample) => sample.angle ?? 0);
    const seconds = swingTuning.stillTime / 1000;
    const turned = Math.abs(median(angles.slice(0, angles.length >> 1)) - median(angles.slice(angles.length >> 1)));
    if (turned > (swingTuning.stillRate * seconds) / 2) continue;
    const grips = span.flatMap((sample) => (sample.shaft === null ? [] : [sample.shaft.grip]));
    if (grips.length === 0) continue;
    return {
      from: first.t,
      to: last.t,
      angle: median(angles),
      hands: {
        x: median(grips.map((grip) => grip.x)),
        y: median(grips.map((grip) => grip.y)),
        z: median(grips.map((grip) => grip.z)),
      },
    };
  }
  return null;
}
