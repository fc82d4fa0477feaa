import { groundPoint, type Point } from "./point.ts";
import { radiansFromDegrees, degrees, type Radians } from "./units.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** Below this elevation the line out of the butt meets the ground too far away to be read. */
export const leastButtElevation: Radians = radiansFromDegrees(degrees(20));

/**
 * Where the line out of the butt end meets the ground. It depends on the line alone, not on where along it the hands are.
 * `points-up` where the head is level with the hands or lower: that line never comes down. `too-flat` under 20 degrees.
 */
export function buttPoint(
  shaft: Pick<ShaftInWorld, "grip" | "toHead">,
):
  | { readonly ok: true; readonly point: Point<"ground"> }
  | { readonly ok: false; readonly reason: "points-up" | "too-flat" } {
  const { toHead } = shaft;
  if (!(toHead.z > 0)) return { ok: false, reason: "points-up" };
  if (toHead.z < Math.sin(leastButtElevation)) return { ok: false, reason: "too-flat" };
  return { ok: true, point: lineOnGround(shaft) };
}

/** Where the shaft's line meets the ground, however far away; with the head over the hands that is out of the butt. */
export function lineOnGround({ grip, toHead }: Pick<ShaftInWorld, "grip" | "toHead">): Point<"ground"> {
  const reach = grip.z / toHead.z;
  return groundPoint(grip.x - reach * toHead.x, grip.y - reach * toHead.y);
}
