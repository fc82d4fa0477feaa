import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { LiftObservation } from "@overcue/shared-geometry/lift-observation";
import { worldPoint } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";

/**
 * What a line drawn on the video says, read as people do: the shaft's line is run on to the level of the ball and judged there against
 * the ball and the toes (for the head point: the head dropped straight down in the picture). The places of ball and toes in the picture are taken as exact.
 * y of the butt point and of the head point, metres; null where the drawn line does not come down there.
 */
export function drawLine(
  seen: LiftObservation,
  settings: StationSettings,
  camera: Camera,
): { readonly butt: number | null; readonly head: number | null } {
  const ball = project(camera, worldPoint(0, 0, 0));
  const toes = project(camera, worldPoint(0, settings.toeLine, 0));
  if (!ball || !toes) return { butt: null, head: null };
  const side = { x: toes.x - ball.x, y: toes.y - ball.y };
  const meets = (from: { x: number; y: number }, to: { x: number; y: number }): number | null => {
    const cross = side.x * to.y - side.y * to.x;
    if (Math.abs(cross) < 1e-9 * Math.hypot(side.x, side.y)) return null;
    return (settings.toeLine * ((from.x - ball.x) * to.y - (from.y - ball.y) * to.x)) / cross;
  };
  return { butt: meets(seen.grip, seen.direction), head: seen.head && meets(seen.head.at, { x: 0, y: 1 }) };
}
