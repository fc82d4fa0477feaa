import { dateInPicture } from "./date-in-picture.ts";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { findPictureRep, type FoundInPicture } from "./find-picture-rep.ts";
import { timeAbout, timeAt, turnsOf } from "./hands-path.ts";
import { median } from "./median.ts";
import { movingTime } from "./moving-time.ts";
import { pictureClip, type PictureClip } from "./picture-clip.ts";
import type { PictureMoment } from "./picture-moment.ts";
import { pictureTuning } from "./picture-tuning.ts";
import { tempoBetween, type Tempo } from "./tempo-between.ts";

/** A rep told from the picture alone: no place on the ground can be read of it. */
export interface PictureRep {
  readonly kind: "full" | "half" | "pump" | "flow";
  readonly startedAt: number;
  readonly endedAt: number;
  readonly checkpoints: readonly CheckpointTime[];
  readonly tempo: Tempo | null;
}

/**
 * Reps of a clip whose camera nobody knows: the hands rest at the ball with the club pointing down to it, rise to the top, come
 * down faster than they rose, and rise again. The setting off, the top and impact are dated from the picture; arm level and shaft
 * level too, as far as a camera down the line at hand height shows them. Hands at the trail thigh cannot be told without depth: takeaway
 * is dated when the hands have visibly left address.
 */
export function pictureReps(moments: readonly PictureMoment[]): PictureRep[] {
  const clip = pictureClip(moments);
  const turns = turnsOf(clip.path, pictureTuning.swing);
  const reps: PictureRep[] = [];
  let from = 0;
  turns.forEach((turn, at) => {
    if (!turn.high || turn.index < from) return;
    const highBefore = turns.slice(0, at).findLast(({ high }) => high)?.index ?? 0;
    const tops = turns.slice(at).flatMap(({ index, high }) => (high ? [index] : []));
    const rep = repAbout(clip, Math.max(from, highBefore), tops);
    if (rep === null) return;
    reps.push(rep.told);
    from = rep.finish + 1;
  });
  return reps;
}

function repAbout(
  clip: PictureClip,
  from: number,
  tops: readonly number[],
): { readonly told: PictureRep; readonly finish: number } | null {
  const { path } = clip;
  const found = findPictureRep(clip, from, tops);
  if (found === null) return null;
  const { from: setOff, checkpoints } = dateInPicture(clip, found);
  const impact = checkpoints.find(({ checkpoint }) => checkpoint === "impact");
  const top = checkpoints.find(({ checkpoint }) => checkpoint === "top");
  if (impact === undefined || top === undefined) return null;
  if (movingTime(path, top.t, impact.t) > pictureTuning.quicker * movingTime(path, setOff.t, top.t)) return null;
  const endedAt = path[found.finish]?.t ?? impact.t;
  const firstTop = found.tops > 1 ? { t: timeAt(path, tops[0] ?? found.top), sd: top.sd } : top;
  // Of a swing that had set off when the clip began nobody knows when.
  const tempo = hadSetOff(clip, found) ? null : tempoBetween(setOff, firstTop, top, impact);
  return {
    told: { kind: kindOf(clip, found), startedAt: setOff.t, endedAt, checkpoints, tempo },
    finish: found.finish,
  };
}

/** A clip's own time says nothing of a rehearsal: it may be in slow motion. */
function kindOf(clip: PictureClip, found: FoundInPicture): PictureRep["kind"] {
  if (found.tops > 1) return "pump";
  if (isHalf(clip, found.top)) return "half";
  return found.rest.still || hadSetOff(clip, found) ? "full" : "flow";
}

/** Whether the clip begins so late that neither a rest nor a club that flows back over the ball can be seen in it. */
function hadSetOff({ path }: PictureClip, { rest }: FoundInPicture): boolean {
  return !rest.still && timeAt(path, rest.index) - timeAt(path, 0) < pictureTuning.restTime;
}

/**
 * At a half swing's top the hands are hardly over the shoulder and the club stands up from them, across the line of sight, where it is plainly seen; at a full one's it lies
 * down, and one that points along the line of sight is not seen at all.
 */
function isHalf({ path, moments, overShoulder, scale }: PictureClip, top: number): boolean {
  const [from, to] = timeAbout(path, top, pictureTuning.topDepth);
  const atTop = ({ t }: { readonly t: number }): boolean => t >= from && t <= to;
  const hands = overShoulder.filter(atTop).map(({ value }) => value);
  const over = hands.length === 0 ? Infinity : median(hands);
  if (over >= pictureTuning.fullOverShoulder) return false;
  const rises = moments
    .filter(atTop)
    .flatMap(({ shaft }) => (shaft === null || shaft.head === null ? [] : [(shaft.grip.y - shaft.head.y) / scale]));
  return rises.length === 0 ? over < pictureTuning.surelyHalf : median(rises) > pictureTuning.standsUp;
}
