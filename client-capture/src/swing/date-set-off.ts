import type { FollowedSample } from "./follow-swing.ts";
import type { Rest } from "./rest.ts";
import { startOfGrowth, type StartOfGrowth } from "./start-of-growth.ts";
import { swingTuning } from "./swing-tuning.ts";

/** When the swing angle left its resting value for good. */
export function dateSetOff(samples: readonly FollowedSample[], rest: Rest, topT: number): StartOfGrowth {
  const { least, most, unfittedSd, creepShare } = swingTuning.setOff;
  const away = samples.flatMap((sample) =>
    sample.t < rest.to || sample.angle === null ? [] : [{ t: sample.t, value: sample.angle - rest.angle }],
  );
  const lastInside = away.findLastIndex(({ value }) => value < least);
  const growing = away.slice(lastInside + 1);
  const end = growing.findIndex(({ value }) => value > most);
  const early = growing.slice(0, Math.max(3, end));
  const start = startOfGrowth(early);
  if (start === null) return { t: early[0]?.t ?? rest.to, sd: unfittedSd };
  const t = Math.max(rest.from, start.t);
  return { t, sd: Math.hypot(start.sd, creepShare * (topT - t)) };
}
