import { apart } from "./apart.ts";
import { driftOf, middleOf, steadied, type PlaceAt, type RestToTop } from "./leave-rest.ts";
import { pictureTuning } from "./picture-tuning.ts";

/**
 * The last time that something kept its place about where it rested, for as long as the rest was looked at: a club is shifted and lifted a little before it sets off. The
 * rest itself where there is no later one. What drifts has not paused: hands on their way go slowly for a while, where they come nearer along the line of sight.
 */
export function lastPause(places: readonly PlaceAt[], rest: RestToTop, seen: number): RestToTop {
  const { shifts, pauses } = pictureTuning.setOff;
  const rested = middleOf(places.filter(({ t }) => t >= rest.from && t <= rest.rest));
  const left = places.find(({ t, at }) => t > rest.rest && apart(at, rested) > shifts)?.t ?? rest.rest;
  const steady = steadied(places.filter(({ t }) => t >= rest.from && t <= left));
  for (let last = steady.length - 1; last >= 0; last--) {
    const until = steady[last]?.t ?? rest.rest;
    if (until <= rest.rest) break;
    const from = until - (rest.rest - rest.from);
    const stretch = steady.slice(0, last + 1).filter(({ t }) => t >= from);
    if (stretch.length < 4) continue;
    const middle = middleOf(stretch);
    const near = stretch.filter(({ at }) => apart(at, middle) <= pauses * seen);
    if (near.length >= pictureTuning.mostAtRest * stretch.length && driftOf(stretch) <= pauses * seen)
      return { ...rest, from, rest: until };
  }
  return rest;
}
