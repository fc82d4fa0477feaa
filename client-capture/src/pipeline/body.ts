import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Point } from "@overcue/shared-geometry/point";

/** A landmark of the body in the picture, and how likely it is seen, 0 to 1. */
export interface Landmark extends Point<"image"> {
  readonly x: number;
  readonly y: number;
  readonly visibility: number;
}

/**
 * One answer of the pose model: 33 landmarks in MediaPipe's published order
 * (0 nose, 11/12 shoulders, 13/14 elbows, 15/16 wrists, 19/20 index fingers, 23/24 hips, 25/26 knees, 27/28 ankles,
 * 29/30 heels, 31/32 toes; left is odd), in pixels of the upright picture taken at `t`.
 * `world`: the same landmarks in metres about the middle of the hips, in the camera's axes, as the model gives them.
 */
export interface Body {
  readonly t: Milliseconds;
  readonly landmarks: readonly Landmark[];
  readonly world: readonly { readonly x: number; readonly y: number; readonly z: number }[];
  /** Mean visibility of shoulders, hips and wrists, 0 to 1. */
  readonly score: number;
}

export const landmarkIndex = {
  nose: 0,
  leftShoulder: 11,
  rightShoulder: 12,
  leftElbow: 13,
  rightElbow: 14,
  leftWrist: 15,
  rightWrist: 16,
  leftPinky: 17,
  rightPinky: 18,
  leftIndex: 19,
  rightIndex: 20,
  leftThumb: 21,
  rightThumb: 22,
  leftHip: 23,
  rightHip: 24,
  leftKnee: 25,
  rightKnee: 26,
  leftAnkle: 27,
  rightAnkle: 28,
  leftHeel: 29,
  rightHeel: 30,
  leftToe: 31,
  rightToe: 32,
} as const;
