import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { handOverShoulder } from "./lead-hand.ts";
import type { Estimated } from "./swing-sample.ts";

// The quantities whose passing zero is a checkpoint, each with one standard deviation from the sample's own stated errors; what a whole rep shares of them is not in it.

/** One standard deviation at a place of the covariance's diagonal: grip x 0, y 6, z 12 (metres), azimuth 18, elevation 24 (radians). */
export const sdOf = ({ covariance }: ShaftInWorld, place: number): number =>
  Math.sqrt(Math.max(0, covariance[place] ?? 0));

/** Takeaway: the hands further from the target than the middle of the trail thigh, metres. */
export const handsBehindThigh = (shaft: ShaftInWorld, trailThighX: Estimated): Estimated => ({
  value: trailThighX.value - shaft.grip.x,
  sd: Math.hypot(sdOf(shaft, 0), trailThighX.sd),
});

/** Shaft level: the shaft's elevation, radians. */
export const elevationOf = (shaft: ShaftInWorld): Estimated => ({
  value: anglesOf(shaft.toHead).elevation,
  sd: sdOf(shaft, 24),
});

/** Arm level: the lead hand over the lead shoulder, metres. */
export const leadHandHeight = (shaft: ShaftInWorld, leadShoulderZ: Estimated): Estimated => ({
  value: handOverShoulder(shaft, leadShoulderZ),
  sd: Math.hypot(sdOf(shaft, 12), leadShoulderZ.sd),
});
