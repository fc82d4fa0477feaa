import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { slopeOf } from "../swing/slope-of.ts";
import type { GripRate } from "./undo-rolling-shutter.ts";

/** How long before and after a picture its hands' rate is taken over, milliseconds: long against one picture's error of the grip. */
export const gripRateOver = 50;
/** A shorter stretch tells no rate. */
const leastStretch = 15;

/**
 * How fast the grip goes in the picture: the slope of a straight line through its places (least squares). None where the shaft was seen only once, or
 * over too short a time.
 */
export function gripRate(shafts: readonly ShaftInImage[]): GripRate {
  const tracked = shafts.filter((shaft) => shaft.status === "tracked");
  const [first, last] = [tracked[0], tracked[tracked.length - 1]];
  if (first === undefined || last === undefined || last.t - first.t < leastStretch) return { x: 0, y: 0 };
  const rate = (of: "x" | "y"): number => slopeOf(tracked.map(({ t, grip }) => ({ t: t / 1000, value: grip[of] })));
  return { x: rate("x"), y: rate("y") };
}
