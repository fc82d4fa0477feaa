import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";
import type { ClubInPicture } from "../swing/swing-sample.ts";

const ball = worldPoint(0, 0, 0);

/** The club's two ends as far from the ball in the picture as metres look at the ball's distance; null where the club was not seen. */
export function clubInPicture(seen: ShaftInImage, camera: Camera): ClubInPicture | null {
  const at = project(camera, ball);
  if (seen.status !== "tracked" || at === null) return null;
  const { x, y, z } = camera.position;
  const metre = camera.focal / Math.hypot(x, y, z);
  const fromBall = (point: Point<"image">): ClubInPicture["grip"] => ({
    x: (point.x - at.x) / metre,
    y: (point.y - at.y) / metre,
  });
  return { grip: fromBall(seen.grip), head: seen.head === null ? null : fromBall(seen.head), angle: seen.angle };
}
