import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";
import type { DemoMotion } from "../../demo-motion/demo-motion.ts";
import type { DemoPose } from "../../demo-motion/demo-pose.ts";

/** A part of the picture in whole pixels. */
export interface PictureWindow {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Where sunlight goes: down, a little away from the camera and behind the golfer, so that shadows leave the sticks free. */
export const sunlight = { x: 0.3, y: 0.42, z: -1 };

export interface WindowSize {
  readonly width: number;
  readonly height: number;
}

/** Half of the thickest part of the body, metres. */
const thickness = 0.17;
const sampleEvery = 1 / 60;
const margin = 3;

/** The size of a window that holds golfer, club and shadows in every single picture of a motion. */
export function movingWindow(motion: DemoMotion, camera: Camera): WindowSize {
  let width = 1;
  let height = 1;
  for (let t = 0; t <= motion.duration + sampleEvery; t += sampleEvery) {
    const edges = edgesOf(motion.at(t), camera);
    width = Math.max(width, edges.right - edges.left + 2 * margin);
    height = Math.max(height, edges.bottom - edges.top + 2 * margin);
  }
  return { width: Math.min(camera.width, width), height: Math.min(camera.height, height) };
}

/** Where in the picture a window of that size takes in this posture. */
export function windowAround(pose: DemoPose, camera: Camera, size: WindowSize): PictureWindow {
  const edges = edgesOf(pose, camera);
  const place = (low: number, high: number, length: number, whole: number): number =>
    Math.round(Math.min(whole - length, Math.max(0, (low + high - length) / 2)));
  return {
    left: place(edges.left, edges.right, size.width, camera.width),
    top: place(edges.top, edges.bottom, size.height, camera.height),
    ...size,
  };
}

interface Edges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** In whole pixels inside of the picture; the whole picture where something is behind the lens. */
function edgesOf(pose: DemoPose, camera: Camera): Edges {
  const whole = { left: 0, top: 0, right: camera.width, bottom: camera.height };
  let left: number = camera.width;
  let top: number = camera.height;
  let right = 0;
  let bottom = 0;
  for (const point of outlineOf(pose)) {
    const seen = project(camera, point);
    if (!seen) return whole;
    left = Math.min(left, seen.x);
    right = Math.max(right, seen.x);
    top = Math.min(top, seen.y);
    bottom = Math.max(bottom, seen.y);
  }
  return {
    left: Math.max(0, Math.floor(left)),
    top: Math.max(0, Math.floor(top)),
    right: Math.min(camera.width, Math.ceil(right)),
    bottom: Math.min(camera.height, Math.ceil(bottom)),
  };
}

function outlineOf({ body, club }: DemoPose): Point<"world">[] {
  const thin = club ? [club.head, club.butt, ...(club.rodEnd ? [club.rodEnd] : [])] : [];
  const grown = (point: Point<"world">, by: number): Point<"world">[] =>
    [-by, by].flatMap((dx) =>
      [-by, by].flatMap((dy) =>
        [-by, by].map((dz) => worldPoint(point.x + dx, point.y + dy, Math.max(0, point.z + dz))),
      ),
    );
  const points = [
    ...Object.values(body).flatMap((joint) => grown(joint, thickness)),
    ...thin.flatMap((end) => grown(end, 0.1)),
  ];
  const ball = grown(worldPoint(0, 0, 0.02), 0.04);
  return [...points, ...ball, ...points.map(shadowOf)];
}

const shadowOf = (point: Point<"world">): Point<"world"> =>
  worldPoint(point.x - (point.z * sunlight.x) / sunlight.z, point.y - (point.z * sunlight.y) / sunlight.z, 0);
