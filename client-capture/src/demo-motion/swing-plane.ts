import type { Direction } from "@overcue/shared-geometry/world-shaft";

/**
 * A frame in which the club's direction has no pole near its way: `phi` turns round a plane that leans 57 degrees and holds the target line,
 * `psi` leads out of it. At phi 0 the club points down at the ball, at 90 degrees away from the target, at 180 up, at 270 to the target.
 */
const lean = (57 * Math.PI) / 180;
const cos = Math.cos(lean);
const sin = Math.sin(lean);

/** The unit direction of (phi, psi). */
export function directionFromPlane(phi: number, psi: number): Direction {
  const inPlane = Math.cos(psi);
  const down = inPlane * Math.cos(phi);
  const out = Math.sin(psi);
  return { x: -inPlane * Math.sin(phi), y: -down * cos + out * sin, z: -down * sin - out * cos };
}

/** (phi, psi) of a unit direction; phi is the turn nearest to `near`. The plane's own normal has no phi: any is given. */
export function planeFromDirection(direction: Direction, near: number): { readonly phi: number; readonly psi: number } {
  const down = -direction.y * cos - direction.z * sin;
  const out = direction.y * sin - direction.z * cos;
  const turn = 2 * Math.PI;
  const raw = Math.atan2(-direction.x, down);
  return { phi: raw + turn * Math.round((near - raw) / turn), psi: Math.asin(Math.max(-1, Math.min(1, out))) };
}
