import type { Direction, ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { Estimated } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Metres from the middle of the two hands to the middle of the lead hand, towards the butt (half a hand's breadth; from memory, no source). */
const leadHandTowardsButt = 0.045;

/** Height of the lead hand over the middle of the grip, metres. */
function leadHandAboveGrip(toHead: Direction): number {
  return -leadHandTowardsButt * toHead.z;
}

/** Height of the lead hand over the lead shoulder, metres: arm level is where it passes 0. */
export function handOverShoulder({ grip, toHead }: ShaftInWorld, leadShoulderZ: Estimated): number {
  return grip.z + leadHandAboveGrip(toHead) - leadShoulderZ.value;
}

/** Whether hands so far over the lead shoulder, metres, are about the shoulders or over them: there they go at the top and at the finish, and never at the ball. */
export const isHigh = (overShoulder: number): boolean => overShoulder > -swingTuning.leastUnderShoulder;

export const areHandsHigh = (shaft: ShaftInWorld, leadShoulderZ: Estimated): boolean =>
  isHigh(handOverShoulder(shaft, leadShoulderZ));
