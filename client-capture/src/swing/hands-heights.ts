import type { FollowedSample } from "./follow-swing.ts";

/** How high the hands are, metres: as the lifted club has them, and as the pose model does, which is steadier and later; not a number where it has none. */
export interface HandsHeights {
  readonly ofClub: number;
  readonly ofBody: number;
}

export const handsHeights = ({ hanging, hands }: FollowedSample): HandsHeights => ({
  ofClub: hanging?.grip.z ?? Number.NaN,
  ofBody: hands?.place.z ?? Number.NaN,
});

export const higherHands = (a: HandsHeights, b: HandsHeights): HandsHeights => outer(Math.max, a, b);
export const lowerHands = (a: HandsHeights, b: HandsHeights): HandsHeights => outer(Math.min, a, b);

/** Whether the hands rose so far, metres: where the pose model knows them too, by both. */
export const haveRisen = (from: HandsHeights, to: HandsHeights, by: number): boolean =>
  to.ofClub - from.ofClub >= by && !(to.ofBody - from.ofBody < by);

/** A height by the pose model that is not known does not count. */
const outer = (of: (a: number, b: number) => number, a: HandsHeights, b: HandsHeights): HandsHeights => ({
  ofClub: of(a.ofClub, b.ofClub),
  ofBody: Number.isNaN(a.ofBody) ? b.ofBody : Number.isNaN(b.ofBody) ? a.ofBody : of(a.ofBody, b.ofBody),
});
