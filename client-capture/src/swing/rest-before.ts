import type { FollowedSample } from "./follow-swing.ts";
import { median } from "./median.ts";
import type { Rest } from "./rest.ts";
import { restsInPicture, type RestInPicture } from "./rests-in-picture.ts";
import { swingTuning } from "./swing-tuning.ts";

/** What a rep set off from. */
export interface RestBefore {
  readonly rest: Rest;
  /** Whether the club stood at the ball; else it was held forward of it. */
  readonly atBall: boolean;
}

/**
 * Where the club last stood still before the top of a rep, and not before `earliest`, milliseconds. One that stands off the ground with the hands further back than they were at the ball, or
 * with them plainly so, is held on its way back: the rep set off from the ball, however long ago. Where the head was not seen at rest, or nobody knows where the ball lies in the picture, the swing angle tells.
 */
export function restBefore(samples: readonly FollowedSample[], earliest: number): RestBefore | null {
  const [last, ...before] = restsInPicture(samples, earliest);
  const byAngle = restByAngle(samples.filter(({ t }) => t >= earliest));
  if (last === undefined || (byAngle !== null && byAngle.from > last.to && !headSeen(samples, byAngle))) {
    return byAngle === null ? null : { rest: byAngle, atBall: byAngle.angle > -swingTuning.flowForward };
  }
  const told = (one: RestInPicture): ToldRest => ({ since: one.since, isDown: isDown(one), ...restAt(samples, one) });
  const start = setOffFrom(told(last), before.map(told));
  return { rest: start, atBall: start.isDown };
}

interface ToldRest extends Rest {
  readonly since: number;
  readonly isDown: boolean;
}

/** The `latest` rest, or the one at the ball that the club went there from, be it by way of others; `earlier`: the latest first. */
function setOffFrom(latest: ToldRest, earlier: readonly ToldRest[]): ToldRest {
  let start = latest;
  let held = 0;
  for (const rest of earlier) {
    if (isOnTheWayBack(start, rest, start.since - rest.to - held)) [start, held] = [rest, 0];
    else held += rest.to - rest.since;
  }
  return start;
}

/** Held on the way back, or creeping, where the club stood at the ball before; `between`: milliseconds that it was on its way from there. */
function isOnTheWayBack(later: ToldRest, earlier: ToldRest, between: number): boolean {
  const { furtherBack, plainlyBack, creepTime, toHold } = swingTuning.rest;
  if (!earlier.isDown || later.hands.x > earlier.hands.x - furtherBack) return false;
  if (!later.isDown || later.hands.x < earlier.hands.x - plainlyBack) return between < toHold;
  return between < creepTime && later.to - later.from < creepTime;
}

const isDown = ({ head }: RestInPicture): boolean => head.y > -swingTuning.rest.offGround;

/** In half of the pictures or more: then that it stood still there would have been seen in them. */
function headSeen(samples: readonly FollowedSample[], { from, to }: Rest): boolean {
  const during = samples.filter(({ t }) => t >= from && t <= to);
  return during.filter(({ inPicture }) => inPicture !== null && inPicture.head !== null).length * 2 >= during.length;
}

function restAt(samples: readonly FollowedSample[], { from, to }: RestInPicture): Rest {
  const during = samples.filter(({ t }) => t >= from && t <= to);
  return { from, to, ...middleOf(during) };
}

function middleOf(span: readonly FollowedSample[]): Pick<Rest, "angle" | "hands"> {
  const grips = span.flatMap(({ shaft }) => (shaft === null ? [] : [shaft.grip]));
  return {
    angle: median(span.flatMap(({ angle }) => (angle === null ? [] : [angle]))),
    hands: {
      x: median(grips.map((grip) => grip.x)),
      y: median(grips.map((grip) => grip.y)),
      z: median(grips.map((grip) => grip.z)),
    },
  };
}

function restByAngle(all: readonly FollowedSample[]): Rest | null {
  const samples = all.filter(({ angle }) => angle !== null);
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
    if (span.every(({ shaft }) => shaft === null)) continue;
    return { from: first.t, to: last.t, ...middleOf(span) };
  }
  return null;
}
