import type { PoseLandmarkerResult } from "@mediapipe/tasks-vision";
import { milliseconds } from "@overcue/shared-geometry/units";
import { landmarkIndex, type Body } from "../pipeline/body.ts";

const scored = [
  landmarkIndex.leftShoulder,
  landmarkIndex.rightShoulder,
  landmarkIndex.leftHip,
  landmarkIndex.rightHip,
  landmarkIndex.leftWrist,
  landmarkIndex.rightWrist,
];

/** The first person that the model found, in pixels of a picture of that size; null where it found nobody. */
export function bodyFromResult(result: PoseLandmarkerResult, width: number, height: number, t: number): Body | null {
  const landmarks = result.landmarks[0];
  const world = result.worldLandmarks[0];
  if (landmarks === undefined || world === undefined || landmarks.length < 33 || world.length < 33) return null;
  const seen = landmarks.map(({ x, y, visibility }) => ({ x: x * width, y: y * height, visibility }));
  if (!seen.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))) return null;
  const score = scored.reduce((sum, index) => sum + (seen[index]?.visibility ?? 0), 0) / scored.length;
  return { t: milliseconds(t), landmarks: seen, world: world.map(({ x, y, z }) => ({ x, y, z })), score };
}
