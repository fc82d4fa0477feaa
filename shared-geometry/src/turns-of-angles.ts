import type { Direction } from "./world-shaft.ts";

type Three = readonly [number, number, number];

/**
 * The turn about the world's axes for a change of azimuth, and the one for a change of elevation. Both are square to the shaft and to each other;
 * their lengths are the shaft's level part and 1.
 */
export function turnsOfAngles({ x, y, z }: Direction): readonly [Three, Three] {
  const level = Math.hypot(x, y);
  // A change of azimuth turns about the vertical; only its part square to the shaft moves the shaft.
  return [[-z * x, -z * y, 1 - z * z], level > 0 ? [y / level, -x / level, 0] : [0, -1, 0]];
}
