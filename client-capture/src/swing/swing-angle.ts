import { radians, type Radians } from "@overcue/shared-geometry/units";
import type { Direction, ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

/**
 * How far the club has swung, seen face-on: 0 hanging straight down, positive going back.
 * A quarter turn is shaft level going back, half a turn straight up, three quarters level at the top; the follow-through is negative.
 * In (-pi, pi]; `followSwing` follows it through half a turn. A shaft level across the target line has no swing
 * angle (NaN would be a lie, so null).
 */
export function swingAngle(toHead: Direction): Radians | null {
  const inFaceOnPlane = Math.hypot(toHead.x, toHead.z);
  if (inFaceOnPlane < 0.05) return null;
  return radians(Math.atan2(-toHead.x, -toHead.z));
}

/** How far the club has turned from hanging straight down, seen face-on and to either side, 0 to pi; null where it has no swing angle. */
export function turnFromLow(toHead: Direction): number | null {
  const angle = swingAngle(toHead);
  return angle === null ? null : Math.abs(angle);
}

/** One standard deviation of the swing angle (radians) from the covariance of azimuth and elevation. */
export function swingAngleSd(shaft: ShaftInWorld): number {
  const { x, y, z } = shaft.toHead;
  const inPlane = x * x + z * z;
  const level = Math.hypot(x, y);
  if (inPlane < 1e-6 || level < 1e-6) return Math.sqrt(Math.max(0, shaft.covariance[24] ?? 0));
  // d(x, z) / d azimuth = (-y, 0); d(x, z) / d elevation = (-z x / level, level).
  const byAzimuth = (z * -y) / inPlane;
  const byElevation = (z * ((-z * x) / level) - x * level) / inPlane;
  const [azimuth, cross, elevation] = [shaft.covariance[18] ?? 0, shaft.covariance[19] ?? 0, shaft.covariance[24] ?? 0];
  const variance =
    byAzimuth * byAzimuth * azimuth + 2 * byAzimuth * byElevation * cross + byElevation * byElevation * elevation;
  return Math.sqrt(Math.max(0, variance));
}
