import { apart } from "./apart.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { median } from "./median.ts";
import { pictureTuning } from "./picture-tuning.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Where the club stood still in the picture: the last of its time there that is looked at, milliseconds, since when it had stood there, and where its head was, metres from the ball. */
export interface RestInPicture {
  readonly since: number;
  readonly from: number;
  readonly to: number;
  readonly head: { readonly x: number; readonly y: number };
}

type Place = readonly number[];

interface Seen {
  readonly t: number;
  readonly head: Place;
  readonly hands: Place;
}

/**
 * Where club and hands stood still, the latest first; places nearer to each other than the head is told apart are one. How far the club has swung is
 * known only to some ten degrees while it hangs low, but that it keeps its place in the picture is seen plainly. Looked for until `earliest`, and from one that is found for as long again as
 * a club is on its way to a hold; milliseconds.
 */
export function restsInPicture(samples: readonly FollowedSample[], earliest: number): RestInPicture[] {
  const seen = samples.flatMap(({ t, inPicture, hands }): Seen[] => {
    if (inPicture === null || inPicture.head === null || hands === null) return [];
    const { head } = inPicture;
    const { x, y, z } = hands.place;
    return [{ t, head: [head.x, head.y], hands: [pictureTuning.depthCounts * x, y, z] }];
  });
  const rests: RestInPicture[] = [];
  for (let end = seen.length - 1, first = end; end >= 0; end--) {
    const last = seen[end];
    if (last === undefined) continue;
    const later = rests[rests.length - 1];
    if (last.t < Math.min(earliest, (later?.since ?? Infinity) - swingTuning.rest.toHold)) break;
    first = Math.min(first, end);
    while (first > 0 && last.t - (seen[first - 1]?.t ?? 0) <= swingTuning.stillTime) first--;
    const rest = restOf(seen.slice(first, end + 1));
    if (rest === null) continue;
    const isSame =
      later !== undefined &&
      rest.to > later.since &&
      Math.hypot(rest.head.x - later.head.x, rest.head.y - later.head.y) <= pictureTuning.headRests;
    if (!isSame) rests.push(rest);
    else {
      const isLong = later.to - rest.from >= pictureTuning.longRest;
      rests[rests.length - 1] = { ...(isLong ? later : { ...rest, to: later.to }), since: rest.from };
    }
  }
  return rests;
}

function restOf(stretch: readonly Seen[]): RestInPicture | null {
  const [first, last] = [stretch[0], stretch[stretch.length - 1]];
  if (first === undefined || last === undefined || stretch.length < 6) return null;
  if (last.t - first.t < 0.7 * swingTuning.stillTime) return null;
  const { rests, headRests } = pictureTuning;
  const isStill = keepsPlace(stretch, "hands", rests) && keepsPlace(stretch, "head", headRests);
  const [x = 0, y = 0] = middleOf(stretch, "head");
  return isStill ? { since: first.t, from: first.t, to: last.t, head: { x, y } } : null;
}

type Part = "head" | "hands";

function keepsPlace(stretch: readonly Seen[], part: Part, within: number): boolean {
  const middle = middleOf(stretch, part);
  const third = Math.floor(stretch.length / 3);
  const thirds = [stretch.slice(0, third), stretch.slice(third, -third), stretch.slice(-third)];
  const near = stretch.filter((one) => apart(one[part], middle) <= within);
  return (
    near.length >= pictureTuning.mostNear * stretch.length &&
    thirds.every((some) => apart(middleOf(some, part), middle) <= within)
  );
}

const middleOf = (stretch: readonly Seen[], part: Part): Place =>
  (stretch[0]?.[part] ?? []).map((_, axis) => median(stretch.map((one) => one[part][axis] ?? 0)));
