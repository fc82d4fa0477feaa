import { angleBetween } from "@overcue/shared-geometry/angle";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { FollowedSample } from "./follow-swing.ts";
import { lately } from "./lately.ts";
import type { ClubInPicture } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

type WithShaft = FollowedSample & { readonly shaft: ShaftInWorld; readonly angle: number };

export function hasShaft(sample: FollowedSample | undefined): sample is WithShaft {
  return sample !== undefined && sample.shaft !== null && sample.angle !== null;
}

/**
 * Whether the club stood still over the last `stillTime`: in the picture where it was seen there all the while, for its depth and its lean are never steady; else by swing angle and
 * hands.
 */
export function isStill(kept: readonly FollowedSample[]): boolean {
  const samples = lately(kept, swingTuning.stillTime);
  const [first, last] = [samples[0], samples[samples.length - 1]];
  if (first === undefined || last === undefined) return false;
  const seconds = (last.t - first.t) / 1000;
  if (seconds < (0.7 * swingTuning.stillTime) / 1000) return false;
  const clubs = samples.flatMap(({ inPicture }) => (inPicture === null ? [] : [inPicture]));
  if (clubs.length === samples.length) return standsInPicture(clubs);
  if (!hasShaft(first) || !hasShaft(last)) return false;
  const from = first.shaft.grip;
  const to = last.shaft.grip;
  const moved = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
  return (
    Math.abs(last.angle - first.angle) < swingTuning.stillRate * seconds && moved < swingTuning.stillHands * seconds
  );
}

/** The tracker's shaft is steady but for its noise, and the grip's place along it is the pose's: halves of the time are held against each other, across the shaft and by its angle. */
function standsInPicture(clubs: readonly ClubInPicture[]): boolean {
  const { turn, across, stray } = swingTuning.stillInPicture;
  const last = clubs[clubs.length - 1];
  if (last === undefined) return false;
  const [sin, cos] = [Math.sin(last.angle), Math.cos(last.angle)];
  const places = clubs.map(({ grip, angle }) => ({
    turned: angleBetween(last.angle, angle),
    across: (grip.y - last.grip.y) * cos - (grip.x - last.grip.x) * sin,
  }));
  const half = Math.ceil(places.length / 2);
  const between = (of: "turned" | "across"): number =>
    Math.abs(meanOf(places.slice(0, half), of) - meanOf(places.slice(-half), of));
  const strays = places.some(
    (place) => Math.abs(place.turned) > stray * turn || Math.abs(place.across) > stray * across,
  );
  return !strays && between("turned") <= turn && between("across") <= across;
}

const meanOf = <Name extends string>(places: readonly Readonly<Record<Name, number>>[], name: Name): number =>
  places.reduce((sum, place) => sum + place[name], 0) / places.length;
