import { bestSplit } from "./best-split.ts";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { fitCrossing, type Crossing, type SeriesPoint } from "./fit-crossing.ts";
import { handsPath, turnsOf, type HandsMoment, type Turn } from "./hands-path.ts";
import { median } from "./median.ts";
import type { PictureMoment } from "./picture-moment.ts";

/** A rep told from the picture alone: no place on the ground can be read of it. */
export interface PictureRep {
  readonly startedAt: number;
  readonly endedAt: number;
  readonly checkpoints: readonly CheckpointTime[];
}

/** Metres of the golfer's own scale, and shares. */
const tuning = {
  /** Least rise and fall of the hands that is a swing and not a waggle. */
  swing: 0.3,
  /** Share of the rise to the top that the hands must come down again to have passed the ball. */
  comesDown: 0.7,
  /** Within this of their resting place the hands have not left address. */
  rests: 0.02,
  /** Least time at rest before a rep, milliseconds. */
  restTime: 120,
  /** A swing comes down in less than this many times the time that its hands were seen going up. */
  quicker: 1.5,
  /** The top is fitted to the hands within this of their highest. */
  topDepth: 0.015,
  /** The hands are lowest this share of the way down's time before impact (common practice, no source: they rise again through the ball). */
  lowBeforeImpact: 0.1,
};

/**
 * Reps of a clip whose camera nobody knows: the hands rest at the ball with the club pointing down to it, rise to the top, come
 * down faster than they rose, and rise again. The setting off, the top and impact are dated from the picture; arm level and shaft
 * level too, as far as a camera down the line at hand height shows them. Hands at the trail thigh cannot be told without depth: takeaway
 * is dated when the hands have visibly left address.
 */
export function pictureReps(moments: readonly PictureMoment[]): PictureRep[] {
  const path = handsPath(moments);
  const turns = turnsOf(path, tuning.swing);
  const reps: PictureRep[] = [];
  let from = 0;
  turns.forEach((turn, at) => {
    if (!turn.high || turn.index < from) return;
    const rep = repAbout(moments, path, turns, at);
    if (rep === null) return;
    reps.push(rep.told);
    from = rep.finish + 1;
  });
  return reps;
}

/** What is known of one rep while it is dated. Indices are into the hands' path. */
interface Found {
  readonly rest: { readonly x: number; readonly up: number; readonly index: number };
  readonly top: number;
  readonly low: number;
  readonly finish: number;
}

function repAbout(
  moments: readonly PictureMoment[],
  path: readonly HandsMoment[],
  turns: readonly Turn[],
  at: number,
): { readonly told: PictureRep; readonly finish: number } | null {
  const found = findRep(moments, path, turns, at);
  if (found === null) return null;
  const checkpoints = dateInPicture(moments, path, found);
  const impact = checkpoints.find(({ checkpoint }) => checkpoint === "impact");
  const setOff = checkpoints.find(({ checkpoint }) => checkpoint === "address");
  const top = checkpoints.find(({ checkpoint }) => checkpoint === "top");
  if (impact === undefined || setOff === undefined || top === undefined) return null;
  if (impact.t - top.t > tuning.quicker * (top.t - setOff.t)) return null;
  const endedAt = path[found.finish]?.t ?? impact.t;
  return { told: { startedAt: setOff.t, endedAt, checkpoints }, finish: found.finish };
}

function findRep(
  moments: readonly PictureMoment[],
  path: readonly HandsMoment[],
  turns: readonly Turn[],
  at: number,
): Found | null {
  const top = turns[at];
  const lowBefore = turns[at - 1]?.index ?? 0;
  if (top === undefined) return null;
  const rest = lastRest(moments, path, turns[at - 2]?.index ?? 0, Math.max(lowBefore, 0), top.index);
  if (rest === null) return null;
  const height = (path[top.index]?.up ?? 0) - rest.up;
  // A pump's turns do not come down to the ball: its last top is the one before the low that does.
  for (let next = at + 1; next < turns.length; next++) {
    const low = turns[next];
    if (low === undefined || low.high || (path[low.index]?.up ?? 0) > rest.up + (1 - tuning.comesDown) * height)
      continue;
    const lastTop = turns[next - 1]?.index ?? top.index;
    const through = turns[next + 1]?.index ?? null;
    // A club that is lowered and stays low was not swung, unless the clip ends there.
    const endsThere = low.index + (low.index - lastTop) / 2 > path.length - 1;
    return through === null && !endsThere
      ? null
      : { rest, top: lastTop, low: low.index, finish: through ?? path.length - 1 };
  }
  return null;
}

/** The last stretch before the top in which the hands stood still while the club pointed down to the ball. */
function lastRest(
  moments: readonly PictureMoment[],
  path: readonly HandsMoment[],
  from: number,
  lowest: number,
  top: number,
): Found["rest"] | null {
  for (let index = top; index >= from; index--) {
    const here = path[index];
    if (here === undefined || here.up > (path[lowest]?.up ?? 0) + 0.15) continue;
    const stretch = path.slice(from, index + 1).filter(({ t }) => here.t - t <= tuning.restTime * 2);
    const first = stretch[0];
    if (first === undefined || here.t - first.t < tuning.restTime) continue;
    const x = median(stretch.map((moment) => moment.x));
    const up = median(stretch.map((moment) => moment.up));
    if (stretch.some((moment) => Math.hypot(moment.x - x, moment.up - up) > tuning.rests / 2)) continue;
    const pointsDown = moments.some(
      ({ t, shaft }) =>
        t >= first.t - 200 &&
        t <= here.t + 200 &&
        shaft !== null &&
        Math.sin(shaft.angle) > 0.4 &&
        Math.cos(shaft.angle) > 0,
    );
    if (pointsDown) return { x, up, index };
  }
  return null;
}

function dateInPicture(
  moments: readonly PictureMoment[],
  path: readonly HandsMoment[],
  found: Found,
): CheckpointTime[] {
  const { rest, top, low } = found;
  const scale = median(moments.map((moment) => moment.scale));
  const topT = path[top]?.t ?? 0;
  const lowT = path[low]?.t ?? 0;
  const restT = path[rest.index]?.t ?? 0;
  const away: SeriesPoint[] = path
    .slice(rest.index, top + 1)
    .map(({ t, x, up }) => ({ t, value: Math.hypot(x - rest.x, up - rest.up), sd: 0.004 }));
  const overShoulder: SeriesPoint[] = moments.flatMap(({ t, hands, leadShoulder }) =>
    hands === null || leadShoulder === null ? [] : [{ t, value: (leadShoulder.y - hands.y) / scale, sd: 0.03 }],
  );
  const rise: SeriesPoint[] = moments.flatMap(({ t, shaft }) =>
    shaft === null
      ? []
      : [{ t, value: shaft.head === null ? -Math.sin(shaft.angle) : (shaft.grip.y - shaft.head.y) / scale, sd: 0.03 }],
  );
  const end = lowT + 0.6 * (lowT - topT);
  const headUp = headAboveRest(moments, restT, scale);
  const setOff = setOffAt(away) ?? restT;
  const dated = (
    checkpoint: CheckpointId,
    series: readonly SeriesPoint[],
    level: number,
    span: readonly [number, number],
    sign: 1 | -1,
    lasting: number,
  ): CheckpointTime[] => {
    const one = cross(series, level, span, sign);
    return one === null
      ? []
      : [{ checkpoint, t: milliseconds(one.t), sd: Math.hypot(one.sd, lasting / Math.max(1e-6, Math.abs(one.slope))) }];
  };
  const impact = dated("impact", headUp, 0, [topT + 0.5 * (lowT - topT), end], 1, 0.05);
  return [
    { checkpoint: "address", t: milliseconds(setOff), sd: 60 },
    ...dated("takeaway", away, tuning.rests, [restT, topT], 1, tuning.rests / 2),
    ...dated("shaft-level-back", rise, 0, [setOff, topT], 1, 0.1),
    ...dated("arm-level-back", overShoulder, 0, [setOff, topT], 1, 0.08),
    dateTop(path, top),
    ...dated("arm-level-down", overShoulder, 0, [topT, lowT], -1, 0.08),
    ...dated("shaft-level-down", rise, 0, [topT, lowT], -1, 0.1),
    // The club head was blurred away: the hands are lowest a moment before impact.
    ...(impact.length > 0
      ? impact
      : [{ checkpoint: "impact" as const, t: milliseconds(lowT + tuning.lowBeforeImpact * (lowT - topT)), sd: 25 }]),
  ];
}

/** How high the head is in the picture over where it rested behind the ball, metres: past the ball it leaves the camera and rises. */
function headAboveRest(moments: readonly PictureMoment[], restT: number, scale: number): SeriesPoint[] {
  const heads = moments.flatMap(({ t, shaft }) =>
    shaft === null || shaft.head === null || Math.sin(shaft.angle) < 0.3 ? [] : [{ t, y: shaft.head.y }],
  );
  const atRest = heads.filter(({ t }) => Math.abs(t - restT) <= 300).map(({ y }) => y);
  if (atRest.length === 0) return [];
  const rest = median(atRest);
  return heads.map(({ t, y }) => ({ t, value: (rest - y) / scale, sd: 0.05 }));
}

function setOffAt(away: readonly SeriesPoint[]): number | null {
  const lastInside = away.findLastIndex(({ value }) => value < tuning.rests / 2);
  return away[Math.max(0, lastInside)]?.t ?? null;
}

function cross(
  series: readonly SeriesPoint[],
  level: number,
  [from, to]: readonly [number, number],
  sign: 1 | -1,
): Crossing | null {
  const inside = series.filter(({ t }) => t >= from && t <= to);
  const best = bestSplit(inside, level, { from, to }, sign);
  return best === null ? null : fitCrossing(inside, best, level, { least: 50, change: 0.1, sharedErrors: 2 });
}

/** The middle of the time that the hands spend at their highest. */
function dateTop(path: readonly HandsMoment[], top: number): CheckpointTime {
  const highest = path[top];
  let first = top;
  let last = top;
  const high = (index: number): boolean => (path[index]?.up ?? -Infinity) > (highest?.up ?? 0) - tuning.topDepth;
  while (high(first - 1)) first--;
  while (high(last + 1)) last++;
  const from = path[first]?.t ?? 0;
  const to = path[last]?.t ?? 0;
  return { checkpoint: "top", t: milliseconds((from + to) / 2), sd: Math.max(10, (to - from) / 6) };
}
