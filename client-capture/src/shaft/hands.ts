import type { Body, Landmark } from "../pipeline/body.ts";
import { landmarkIndex } from "../pipeline/body.ts";

/** Where the hands hold the club, as the pose alone says, and the length that everything is scaled by. In picture pixels. */
export interface Hands {
  x: number;
  y: number;
  torso: number;
  /** Mean visibility of what the place rests on, 0 to 1. */
  seen: number;
  /** How far the two hands' places lie apart: more than a grip's length means that one is wrong. */
  apart: number;
  /** How high they are held, from the hips (0) to the shoulders (1), and beyond. */
  height: number;
  /** The middle between the shoulders. */
  readonly shoulders: { readonly x: number; readonly y: number };
}

const missing: Landmark = { x: 0, y: 0, visibility: 0 };

/**
 * Middle of the hands from wrists and index fingers. A hand counts by its visibility squared, so that a hidden hand hardly pulls the
 * middle away from the seen one. Null where no landmark carries any weight or the torso has no length.
 */
export function readHands(body: Body): Hands | null {
  const at = (index: number): Landmark => body.landmarks[index] ?? missing;
  const torso = torsoLength(body);
  let x = 0;
  let y = 0;
  let weights = 0;
  let seen = 0;
  for (const [wrist, index] of [
    [landmarkIndex.leftWrist, landmarkIndex.leftIndex],
    [landmarkIndex.rightWrist, landmarkIndex.rightIndex],
  ] as const) {
    const visibility = at(wrist).visibility;
    const weight = visibility * visibility + 1e-3;
    x += weight * (0.3 * at(wrist).x + 0.7 * at(index).x);
    y += weight * (0.3 * at(wrist).y + 0.7 * at(index).y);
    weights += weight;
    seen = Math.max(seen, visibility);
  }
  if (!(torso > 4) || !Number.isFinite(x + y)) return null;
  const apart = Math.hypot(
    at(landmarkIndex.leftIndex).x - at(landmarkIndex.rightIndex).x,
    at(landmarkIndex.leftIndex).y - at(landmarkIndex.rightIndex).y,
  );
  return {
    x: x / weights,
    y: y / weights,
    torso,
    seen,
    apart,
    height: heightOf(body, y / weights),
    shoulders: middleOf(body, landmarkIndex.leftShoulder, landmarkIndex.rightShoulder),
  };
}

/** Half way between two landmarks of the picture. */
export function middleOf({ landmarks }: Body, first: number, second: number): { x: number; y: number } {
  const [a, b] = [landmarks[first] ?? missing, landmarks[second] ?? missing];
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function heightOf(body: Body, y: number): number {
  const at = (index: number): number => (body.landmarks[index] ?? missing).y;
  const shoulders = (at(landmarkIndex.leftShoulder) + at(landmarkIndex.rightShoulder)) / 2;
  const hips = (at(landmarkIndex.leftHip) + at(landmarkIndex.rightHip)) / 2;
  return hips - shoulders > 1 ? (hips - y) / (hips - shoulders) : 0;
}

/** Middle of the shoulders to middle of the hips; a strongly bent back is made up for by the thighs. */
function torsoLength(body: Body): number {
  const shoulders = middleOf(body, landmarkIndex.leftShoulder, landmarkIndex.rightShoulder);
  const hips = middleOf(body, landmarkIndex.leftHip, landmarkIndex.rightHip);
  const knees = middleOf(body, landmarkIndex.leftKnee, landmarkIndex.rightKnee);
  const back = Math.hypot(shoulders.x - hips.x, shoulders.y - hips.y);
  const thigh = Math.hypot(knees.x - hips.x, knees.y - hips.y);
  return Math.max(back, 1.15 * thigh);
}
