import type { Direction } from "@overcue/shared-geometry/world-shaft";

/** Metres from the middle of the two hands to the middle of the lead hand, towards the butt (half a hand's breadth; from memory, no source). */
const leadHandTowardsButt = 0.045;

/** Height of the lead hand over the middle of the grip, metres. */
export function leadHandAboveGrip(toHead: Direction): number {
  return -leadHandTowardsButt * toHead.z;
}
