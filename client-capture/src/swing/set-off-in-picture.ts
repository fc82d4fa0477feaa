import type { SeriesPoint } from "./fit-crossing.ts";
import type { FoundInPicture } from "./find-picture-rep.ts";
import { timeAt, upAt, type HandsMoment } from "./hands-path.ts";
import type { PlaceInPicture } from "./heads-in-picture.ts";
import { median } from "./median.ts";
import type { PictureClip } from "./picture-clip.ts";
import { pictureTuning } from "./picture-tuning.ts";
import { swingTuning } from "./swing-tuning.ts";
import { startOfGrowth, type StartOfGrowth } from "./start-of-growth.ts";

/** The beginning of a rep in the picture. */
export interface SetOffInPicture {
  /** Null out of a flow, which has no rest. */
  readonly address: StartOfGrowth | null;
  /** When it could first be seen that the club, or where its head is not seen the hands, had left its rest. */
  readonly visible: StartOfGrowth | null;
  /** The address; out of a flow, when the hands turned round forward of the ball. */
  readonly from: StartOfGrowth;
}

export function setOffInPicture({ path, heads }: PictureClip, found: FoundInPicture): SetOffInPicture {
  const { rest, top } = found;
  if (!rest.still)
    return {
      address: null,
      visible: null,
      from: { t: timeAt(path, turnedForward(path, rest.index)), sd: swingTuning.setOff.turnSd },
    };
  const span = { rest: timeAt(path, rest.index), top: timeAt(path, top) };
  const { head, hands } = pictureTuning.setOff;
  const ofHands = path.map(({ t, x, up }) => ({ t, x, y: up }));
  const ways = [leaves(heads, span, head), leaves(ofHands, span, hands)].flatMap((one) => one ?? []);
  const [leaving] = ways.sort((a, b) => a.visible.t - b.visible.t);
  if (leaving === undefined) {
    const unfitted = { t: span.rest, sd: pictureTuning.setOff.unfittedSd };
    return { address: unfitted, visible: null, from: unfitted };
  }
  return { address: leaving.address, visible: leaving.visible, from: leaving.address };
}

function turnedForward(path: readonly HandsMoment[], low: number): number {
  let forward = low;
  for (let index = low; index >= 0 && timeAt(path, low) - timeAt(path, index) < pictureTuning.flowTime; index--)
    if (upAt(path, index) > upAt(path, forward)) forward = index;
  return forward;
}

/** Null where it was not seen at rest, or not while it left. */
function leaves(
  places: readonly PlaceInPicture[],
  span: { readonly rest: number; readonly top: number },
  { seen, most }: { readonly seen: number; readonly most: number },
): { readonly address: StartOfGrowth; readonly visible: StartOfGrowth } | null {
  const { restTime, setOff } = pictureTuning;
  const resting = places.filter(({ t }) => t >= span.rest - restTime && t <= span.rest);
  if (resting.length < 4) return null;
  const at = { x: median(resting.map(({ x }) => x)), y: median(resting.map(({ y }) => y)) };
  const away = steadied(places.filter(({ t }) => t >= span.rest - restTime && t <= span.top)).map(
    ({ t, x, y }): SeriesPoint => ({ t, value: Math.hypot(x - at.x, y - at.y), sd: 0 }),
  );
  const scatter = median(away.filter(({ t }) => t <= span.rest).map(({ value }) => value));
  const level = Math.max(seen, setOff.scatters * scatter);
  const lastInside = away.findLastIndex(({ value }) => value < level);
  const [before, after] = [away[lastInside], away[lastInside + 1]];
  if (before === undefined || after === undefined || after.t - before.t > setOff.longestGap) return null;
  const growing = away.slice(lastInside + 1);
  const end = growing.findIndex(({ value }) => value > most + level);
  const start = startOfGrowth(growing.slice(0, Math.max(3, end)));
  const t = before.t + ((after.t - before.t) * (level - before.value)) / (after.value - before.value);
  const address =
    start === null
      ? { t: span.rest, sd: setOff.unfittedSd }
      : { t: Math.min(t, Math.max(span.rest, start.t)), sd: start.sd };
  // Who looks on sees it a little earlier or later than at this level, by as much as it takes to grow by some of it.
  const pace = (swingTuning.setOff.power * level) / Math.max(t - address.t, after.t - before.t);
  const visibleSd = Math.hypot(
    (scatter + level / 3) / pace,
    (after.t - before.t) / 4,
    setOff.seenShare * (span.top - t),
  );
  const backswing = span.top - address.t;
  const addressSd = Math.min(Math.hypot(address.sd, setOff.creepShare * backswing), backswing / 2);
  return { address: { t: address.t, sd: addressSd }, visible: { t, sd: visibleSd } };
}

/** Medians over a short time: the end of a thin line is found a few centimetres up or down it from picture to picture. */
function steadied(places: readonly PlaceInPicture[]): PlaceInPicture[] {
  const half = pictureTuning.setOff.steadiedOver / 2;
  let first = 0;
  let last = -1;
  return places.map(({ t }) => {
    while ((places[first]?.t ?? t) < t - half) first++;
    while (last + 1 < places.length && (places[last + 1]?.t ?? t) <= t + half) last++;
    const near = places.slice(first, last + 1);
    return { t, x: median(near.map(({ x }) => x)), y: median(near.map(({ y }) => y)) };
  });
}
