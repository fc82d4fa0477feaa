import { median } from "./median.ts";
import type { FollowedSample } from "./follow-swing.ts";
import type { Segment } from "./segment-reps.ts";
import { swingTuning } from "./swing-tuning.ts";

/** How the club stood before the rep set off: medians over the rest, or null where it never rested. */
export interface Rest {
  readonly from: number;
  readonly to: number;
  readonly angle: number;
  readonly hands: { readonly x: number; readonly y: number; readonly z: number };
}

/** The samples of one rep from its rest (or the turn before it) to its end, and what stood still before. */
export interface RepSamples {
  readonly samples: readonly FollowedSample[];
  readonly rest: Rest | null;
  /** The rest again where it was at the ball; null where the club rested forward of it. */
  readonly address: Rest | null;
  /** When the club set off going back, milliseconds. */
  readonly setOffAt: number;
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
  const setOffAt = rest === null ? Math.min(turnedAt, segment.leftLowAt) : leavesRest(before, rest);
  const samples = kept.filter(
    (sample) =>
      sample.t >= Math.max(setOffAt - 400, rest?.from ?? setOffAt) &&
      sample.t <= segment.endedAt + swingTuning.afterEnd,
  );
  const address = rest !== null && rest.angle > -swingTuning.flowForward ? rest : null;
  return { samples, rest, address, setOffAt };
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

/**
 * When the swing angle left its resting value. A reach starts from rest with no speed and no acceleration, so that its path grows with
 * a power of the time (minimum jerk: Flash and Hogan 1985, from memory; the third at first, 2.75 on average over these angles); the root
 * of that power is a straight line, and its foot is the start.
 */
function leavesRest(samples: readonly FollowedSample[], rest: Rest): number {
  const away = samples.flatMap((sample) =>
    sample.t < rest.to || sample.angle === null ? [] : [{ t: sample.t, angle: sample.angle - rest.angle }],
  );
  const lastInside = away.findLastIndex(({ angle }) => angle < swingTuning.setOff.least);
  const growing = away.slice(lastInside + 1);
  const end = growing.findIndex(({ angle }) => angle > swingTuning.setOff.most);
  const early = growing.slice(0, Math.max(3, end));
  const first = early[0];
  if (first === undefined || early.length < 3) return first?.t ?? rest.to;
  const roots = early.map(({ t, angle }) => ({
    t: t - first.t,
    root: Math.max(0, angle) ** (1 / swingTuning.setOff.power),
  }));
  const meanT = roots.reduce((sum, { t }) => sum + t, 0) / roots.length;
  const meanRoot = roots.reduce((sum, { root }) => sum + root, 0) / roots.length;
  const together = roots.reduce((sum, { t, root }) => sum + (t - meanT) * (root - meanRoot), 0);
  const alone = roots.reduce((sum, { t }) => sum + (t - meanT) ** 2, 0);
  if (!(together > 0)) return first.t;
  return Math.max(rest.from, first.t + meanT - (meanRoot * alone) / together);
}
