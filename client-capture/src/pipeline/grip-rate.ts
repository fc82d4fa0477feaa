import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
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
  const places = shafts.flatMap((shaft) => (shaft.status === "tracked" ? [{ t: shaft.t / 1000, ...shaft.grip }] : []));
  const [first, last] = [places[0], places[places.length - 1]];
  if (first === undefined || last === undefined || last.t - first.t < leastStretch / 1000) return { x: 0, y: 0 };
  const mean = places.reduce((sum, { t }) => sum + t, 0) / places.length;
  const spread = places.reduce((sum, { t }) => sum + (t - mean) ** 2, 0);
  const slope = (of: "x" | "y"): number =>
    places.reduce((sum, place) => sum + (place.t - mean) * place[of], 0) / spread;
  return { x: slope("x"), y: slope("y") };
}
