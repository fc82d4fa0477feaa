import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { milliseconds } from "@overcue/shared-geometry/units";
import { bestSplit } from "./best-split.ts";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { dateTopInPicture } from "./date-top-in-picture.ts";
import type { FoundInPicture } from "./find-picture-rep.ts";
import { fitCrossing, type Crossing, type SeriesPoint } from "./fit-crossing.ts";
import { timeAt } from "./hands-path.ts";
import { impactInPicture } from "./impact-in-picture.ts";
import type { PictureClip } from "./picture-clip.ts";
import { pictureTuning } from "./picture-tuning.ts";
import { setOffInPicture } from "./set-off-in-picture.ts";
import type { StartOfGrowth } from "./start-of-growth.ts";

/** The instants of a rep as its pictures show them, and when it began. */
export interface DatedInPicture {
  readonly from: StartOfGrowth;
  readonly checkpoints: readonly CheckpointTime[];
}

export function dateInPicture(clip: PictureClip, found: FoundInPicture): DatedInPicture {
  const { moments, path, heads, scale, overShoulder } = clip;
  const { top, low } = found;
  const [topT, lowT] = [timeAt(path, top), timeAt(path, low)];
  const setOff = setOffInPicture(clip, found);
  const { looksHigher, sd } = pictureTuning.armLevel;
  const rise = moments.flatMap(({ t, shaft }): SeriesPoint[] =>
    shaft === null
      ? []
      : [{ t, value: shaft.head === null ? -Math.sin(shaft.angle) : (shaft.grip.y - shaft.head.y) / scale, sd: 0.03 }],
  );
  const back: Span = [setOff.from.t, topT];
  const down: Span = [topT, lowT];
  // Few pictures see a fast club come down: the next one may come after the hands' low.
  const levelDown: Span = [topT, lowT + pictureTuning.levelBefore * (lowT - topT)];
  const told = (checkpoint: CheckpointId, at: { t: number; sd: number } | null): CheckpointTime[] =>
    at === null ? [] : [{ checkpoint, t: milliseconds(at.t), sd: at.sd }];
  return {
    from: setOff.from,
    checkpoints: [
      ...told("address", setOff.address),
      ...told("takeaway", setOff.visible),
      ...dated("shaft-level-back", rise, 0, back, 1, pictureTuning.shaftLevelSd),
      ...dated("arm-level-back", overShoulder, looksHigher, back, 1, sd),
      dateTopInPicture(path, top),
      ...dated("arm-level-down", overShoulder, looksHigher, down, -1, sd),
      ...dated("shaft-level-down", rise, 0, levelDown, -1, pictureTuning.shaftLevelSd),
      ...told("impact", impactInPicture(path, heads, top, low)),
    ],
  };
}

/** Milliseconds, both ends closed. */
type Span = readonly [number, number];

/** `lasting`: an error that every sample shares, in the series' unit. */
function dated(
  checkpoint: CheckpointId,
  series: readonly SeriesPoint[],
  level: number,
  span: Span,
  sign: 1 | -1,
  lasting: number,
): CheckpointTime[] {
  const one = cross(series, level, span, sign);
  if (one === null) return [];
  const sd = Math.hypot(one.sd, lasting / Math.max(1e-6, Math.abs(one.slope)));
  return [{ checkpoint, t: milliseconds(one.t), sd }];
}

function cross(series: readonly SeriesPoint[], level: number, [from, to]: Span, sign: 1 | -1): Crossing | null {
  const inside = series.filter(({ t }) => t >= from && t <= to);
  const best = bestSplit(inside, level, { from, to }, sign);
  return best === null ? null : fitCrossing(inside, best, level, { least: 50, change: 0.1, sharedErrors: 2 });
}
