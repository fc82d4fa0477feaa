import { acrossTheClub } from "./across-the-club.ts";
import { timeAt, upAt, type HandsMoment } from "./hands-path.ts";
import type { HeadInPicture } from "./heads-in-picture.ts";
import { driftOf } from "./leave-rest.ts";
import { median } from "./median.ts";
import type { PictureClip } from "./picture-clip.ts";
import type { PictureMoment } from "./picture-moment.ts";
import { pictureTuning } from "./picture-tuning.ts";

/** What is known of one rep while it is dated. Indices are into the hands' path. */
export interface FoundInPicture {
  readonly rest: Rest;
  /** The last top of a pump, and how many there were. */
  readonly top: number;
  readonly tops: number;
  readonly low: number;
  readonly finish: number;
}

/** Where the hands were before they went up, and the last moment there. */
interface Rest {
  readonly x: number;
  readonly up: number;
  readonly index: number;
  /** Up to then they were looked at for so long, milliseconds. */
  readonly time: number;
  /** Whether they stood still, and the club at the ball. */
  readonly still: boolean;
}

/** The rep whose first top is the first of `tops`, later ones being those of a pump; it begins no earlier than `from`. Null where it is none. */
export function findPictureRep(clip: PictureClip, from: number, tops: readonly number[]): FoundInPicture | null {
  const firstTop = tops[0];
  if (firstTop === undefined) return null;
  const { path } = clip;
  const rested = restBefore(clip, from, firstTop);
  if (rested === null) return null;
  const rest = { ...rested, still: rested.still && !isForward(clip, rested, firstTop) };
  const height = upAt(path, firstTop) - rest.up;
  const down = rest.up + (1 - pictureTuning.comesDown) * height;
  const cameDown = path.findIndex(({ up }, index) => index > firstTop && up <= down);
  if (cameDown < 0) return null;
  // A pump's turns do not come down to the ball: its last top is the one before the low that does.
  const top = tops.findLast((index) => index < cameDown) ?? firstTop;
  const low = lowAfter(path, cameDown);
  const downTime = timeAt(path, low) - timeAt(path, top);
  const latest = timeAt(path, low) + pictureTuning.through.times * downTime + pictureTuning.through.more;
  const finish = highAfter(path, low, latest);
  // A club that is lowered and stays low was not swung, unless the clip ends there.
  const endsThere = timeAt(path, path.length - 1) < latest;
  return upAt(path, finish) - upAt(path, low) < pictureTuning.risesThrough && !endsThere
    ? null
    : { rest, top, tops: tops.filter((index) => index <= top).length, low, finish };
}

/** The highest place after a low that the hands rise to without a fall between; they set out for it before `latest` (milliseconds). */
function highAfter(path: readonly HandsMoment[], low: number, latest: number): number {
  let high = low;
  for (let index = low; index < path.length; index++) {
    const risen = upAt(path, high) - upAt(path, low) > pictureTuning.risesThrough;
    if (upAt(path, index) > upAt(path, high)) high = index;
    else if (risen ? upAt(path, index) < upAt(path, high) - pictureTuning.risesThrough : timeAt(path, index) > latest)
      break;
  }
  return high;
}

/** The lowest place from `from` on, before the hands rise again. */
function lowAfter(path: readonly HandsMoment[], from: number): number {
  let low = from;
  for (let index = from; index < path.length; index++) {
    if (upAt(path, index) < upAt(path, low)) low = index;
    if (upAt(path, index) > upAt(path, low) + pictureTuning.risesThrough / 2) break;
  }
  return low;
}

/**
 * Where the hands last stood still before a top while the club pointed down to the ball; where they never did (back and forth without a stop), their
 * lowest place. Null where the club did not point down.
 */
function restBefore({ moments, path, heads }: PictureClip, from: number, top: number): Rest | null {
  let lowest = from;
  for (let index = from; index <= top; index++) if (upAt(path, index) < upAt(path, lowest)) lowest = index;
  const time = restTimeBefore(path, lowest, top);
  for (let index = top; index >= from; index--) {
    const here = path[index];
    if (here === undefined || here.up > upAt(path, top) - pictureTuning.swing) continue;
    const rest = restAt(path, from, index, time);
    if (rest === null || !pointsDown(moments, here.t - time, here.t)) continue;
    if (!headRests(heads, here.t - time, here.t)) continue;
    // Its end may be the first creeping away: the moment before it is the surer rest.
    const earlier = restAt(
      path,
      from,
      path.findLastIndex(({ t }) => t <= here.t - time),
      time,
    );
    const isSame = earlier !== null && Math.hypot(earlier.x - rest.x, earlier.up - rest.up) < pictureTuning.rests;
    return isSame ? earlier : rest;
  }
  const { x, up, t } = path[lowest] ?? { x: 0, up: 0, t: 0 };
  if (!pointsDown(moments, t - time, t + time)) return null;
  return { x, up, index: lowest, time, still: false };
}

/** How long the hands rest at least before a swing that goes up as fast as this one: who swings fast stirs until shortly before. Milliseconds. */
function restTimeBefore(path: readonly HandsMoment[], low: number, top: number): number {
  const { restTime, leastRest, restShare } = pictureTuning;
  const begun = upAt(path, low) + (upAt(path, top) - upAt(path, low)) / 10;
  const from = path.findLastIndex(({ up }, index) => index <= top && up <= begun);
  return Math.min(restTime, Math.max(leastRest, restShare * (timeAt(path, top) - timeAt(path, from))));
}

/** Whether the club rested forward of the ball and off the ground: then its head comes down in the picture as it goes back over the ball. From the ball it hardly does. */
function isForward({ path, heads }: PictureClip, rest: Rest, top: number): boolean {
  const restT = timeAt(path, rest.index);
  const topT = timeAt(path, top);
  const atRest = heads.filter(({ t }) => t >= restT - rest.time && t <= restT).map(({ y }) => y);
  const after = heads.filter(({ t }) => t > restT && t < topT).map(({ y }) => y);
  // Single heads are found too far out: the third lowest counts.
  const lowest = after.sort((a, b) => b - a)[2];
  return lowest !== undefined && atRest.length > 0 && lowest - median(atRest) > pictureTuning.offBall;
}

function restAt(path: readonly HandsMoment[], from: number, index: number, time: number): Rest | null {
  const t = timeAt(path, index);
  let first = index;
  while (first > from && t - timeAt(path, first) < time) first--;
  const stretch = path.slice(first, index + 1);
  // Who trims a clip leaves little of the rest before the first swing.
  const enough = first === 0 ? Math.min(time, pictureTuning.leastRest) : time;
  if (stretch.length < 4 || t - timeAt(path, first) < enough) return null;
  const middle = (part: readonly HandsMoment[]): { x: number; up: number } => ({
    x: median(part.map((moment) => moment.x)),
    up: median(part.map((moment) => moment.up)),
  });
  const half = stretch.length >> 1;
  const [early, late, all] = [middle(stretch.slice(0, half)), middle(stretch.slice(half)), middle(stretch)];
  const near = stretch.filter((moment) => Math.hypot(moment.x - all.x, moment.up - all.up) <= pictureTuning.rests);
  const isStill =
    Math.hypot(late.x - early.x, late.up - early.up) < pictureTuning.rests / 2 &&
    near.length >= pictureTuning.mostAtRest * stretch.length;
  return isStill ? { ...all, index, time: Math.min(time, t - timeAt(path, first)), still: true } : null;
}

/** Whether the head stood still, as far as it was seen: going back the hands come nearer to the camera and hardly move in its picture. */
function headRests(heads: readonly HeadInPicture[], from: number, to: number): boolean {
  const seen = heads.filter(({ t }) => t >= from && t <= to);
  return seen.length < 4 || driftOf(acrossTheClub(seen)) < pictureTuning.headRests;
}

function pointsDown(moments: readonly PictureMoment[], from: number, to: number): boolean {
  return moments.some(
    ({ t, shaft }) =>
      t >= from && t <= to && shaft !== null && Math.sin(shaft.angle) > 0.4 && Math.cos(shaft.angle) > 0,
  );
}
