import type { FollowedSample } from "./follow-swing.ts";
import { leaveRest, type PlaceAt } from "./leave-rest.ts";
import { median } from "./median.ts";
import { pictureTuning } from "./picture-tuning.ts";
import type { RestBefore } from "./rest-before.ts";
import type { Rest } from "./rest.ts";
import { startOfGrowth, type StartOfGrowth } from "./start-of-growth.ts";
import { swingTuning } from "./swing-tuning.ts";

/**
 * When the club left its rest for good. Its head and the hands tell together: going back along the line of sight the head sinks in the picture and passes its
 * resting place once more on its way up, while the hands draw nearer. The swing angle tells
 * where it is known as well, or neither was seen to leave.
 */
export function dateSetOff(samples: readonly FollowedSample[], { rest }: RestBefore, topT: number): StartOfGrowth {
  const { restTime, creeps, setOff } = pictureTuning;
  const sure = Math.max(Math.min(rest.to, rest.from + restTime), rest.to - creeps);
  const span = { from: rest.from, rest: sure, top: topT };
  const leanSd = median(samples.flatMap(({ t, angleSd }) => (t < rest.from || t > rest.to ? [] : [angleSd])));
  const left =
    leanSd < swingTuning.setOff.sureLean
      ? null
      : (leaveRest(placesOf(samples, true), span, setOff.head) ??
        leaveRest(placesOf(samples, false), span, setOff.hands));
  return left?.address ?? setOffByAngle(samples, rest, topT);
}

function placesOf(samples: readonly FollowedSample[], withHead: boolean): PlaceAt[] {
  return samples.flatMap(({ t, inPicture, hands }) => {
    if (hands === null) return [];
    const { x, y, z } = hands.place;
    const ofHands = [pictureTuning.depthCounts * x, y, z];
    if (!withHead) return [{ t, at: ofHands }];
    const head = inPicture?.head ?? null;
    return head === null ? [] : [{ t, at: [head.x, head.y, ...ofHands] }];
  });
}

/** When the swing angle left its resting value for good. */
function setOffByAngle(samples: readonly FollowedSample[], rest: Rest, topT: number): StartOfGrowth {
  const { least, most, unfittedSd, creepShare } = swingTuning.setOff;
  const away = samples.flatMap(({ t, angle, angleSd }) =>
    t < rest.to || angle === null ? [] : [{ t, value: angle - rest.angle, sd: angleSd }],
  );
  const lastInside = away.findLastIndex(({ value }) => value < least);
  const growing = away.slice(lastInside + 1);
  const end = growing.findIndex(({ value }) => value > most);
  const early = growing.slice(0, Math.max(3, end));
  const start = startOfGrowth(early);
  if (start === null) return { t: early[0]?.t ?? rest.to, sd: unfittedSd };
  const t = Math.max(rest.from, start.t);
  // What the lean is off by at rest and a moment later differs, and looks like growth.
  const lean = (median(early.map(({ sd }) => sd)) / most) * ((early.at(-1)?.t ?? t) - t);
  return { t, sd: Math.hypot(start.sd, lean, creepShare * (topT - t)) };
}
