import { radians, type Radians } from "./units.ts";
import type { Direction } from "./world-shaft.ts";

/** Azimuth in (-pi, pi] and elevation in [-pi/2, pi/2] of a direction of unit length. */
export function anglesOf(direction: Direction): { readonly azimuth: Radians; readonly elevation: Radians } {
  return {
    azimuth: radians(Math.atan2(direction.y, direction.x)),
    elevation: radians(Math.atan2(direction.z, Math.hypot(direction.x, direction.y))),
  };
}

/** The unit direction of an azimuth and an elevation. */
export function directionOf(azimuth: number, elevation: number): Direction {
  const level = Math.cos(elevation);
  return { x: level * Math.cos(azimuth), y: level * Math.sin(azimuth), z: Math.sin(elevation) };
}
