import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import { worldPoint } from "@overcue/shared-geometry/point";

const farAway = 5000;

/** Sky and a far row of trees as the camera sees them, painted flat; the lawn is drawn over it from the horizon down. `random` in [0, 1). */
export function paintBackdrop(context: OffscreenCanvasRenderingContext2D, camera: Camera, random: () => number): void {
  const { width, height } = camera;
  const horizon = horizonAt(camera);
  const middle = horizon(width / 2);
  const sky = context.createLinearGradient(0, middle - height * 0.55, 0, middle);
  sky.addColorStop(0, "#7fa9d4");
  sky.addColorStop(1, "#dbe7ef");
  context.fillStyle = sky;
  context.fillRect(0, 0, width, height);
  const scale = camera.focal / 90;
  for (const [colour, high, step] of [
    ["#7d9a86", 9, 0.5],
    ["#56785a", 6.5, 0.4],
    ["#446548", 4.5, 0.3],
  ] as const) {
    context.fillStyle = colour;
    for (let x = -20; x < width + 20; x += step * scale) {
      const crown = scale * high * (0.55 + 0.45 * random());
      context.beginPath();
      context.ellipse(x, horizon(x) - crown * 0.35, scale * (1.2 + 1.4 * random()), crown * 0.62, 0, 0, 2 * Math.PI);
      context.fill();
    }
  }
  context.fillStyle = "#3f5f3d";
  for (let x = 0; x < width; x += 2) context.fillRect(x, horizon(x) - scale * 0.8, 2, scale * 1.6);
}

/** The height in the picture at which level ground ends, by column. */
export function horizonAt(camera: Camera): (x: number) => number {
  const { position: p, rotation } = camera;
  const length = Math.hypot(rotation[6], rotation[7]);
  const ahead = { x: rotation[6] / length, y: rotation[7] / length };
  const at = (side: number) =>
    project(
      camera,
      worldPoint(
        p.x + farAway * (ahead.x - 0.3 * side * ahead.y),
        p.y + farAway * (ahead.y + 0.3 * side * ahead.x),
        p.z,
      ),
    );
  const one = at(-1);
  const other = at(1);
  if (!one || !other || one.x === other.x) return () => camera.height / 3;
  const slope = (other.y - one.y) / (other.x - one.x);
  return (x) => one.y + slope * (x - one.x);
}
