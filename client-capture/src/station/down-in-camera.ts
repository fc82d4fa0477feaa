import type { Direction } from "@overcue/shared-geometry/world-shaft";

/** At rest a sensor feels this much, metres a second squared; by so much more or less the phone is being moved. */
const gravity = 9.81;
const mostOff = 1.5;

/**
 * Straight down in the rear camera's axes (x right, y down, z forward) from what the motion sensor feels in the device's (x to the right of the upright
 * screen, y to its top, z out of it; W3C Device Orientation). `turned`: how far the screen's content is turned against the device, degrees
 * (`screen.orientation.angle`). Which way the sensor counts differs between makers; the ground is taken to lie in the picture's lower half.
 * Null while the phone is moved, or lies flat.
 */
export function downInCamera(
  felt: { readonly x: number; readonly y: number; readonly z: number },
  turned: number,
): Direction | null {
  const size = Math.hypot(felt.x, felt.y, felt.z);
  if (!(Math.abs(size - gravity) <= mostOff)) return null;
  const angle = (turned * Math.PI) / 180;
  const right = (felt.x * Math.cos(angle) - felt.y * Math.sin(angle)) / size;
  const top = (felt.x * Math.sin(angle) + felt.y * Math.cos(angle)) / size;
  if (Math.abs(top) < 0.5) return null;
  const sign = top > 0 ? -1 : 1;
  return { x: sign * right, y: -sign * top, z: (-sign * felt.z) / size };
}
