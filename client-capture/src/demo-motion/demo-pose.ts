import type { Point } from "@overcue/shared-geometry/point";
import type { Direction } from "@overcue/shared-geometry/world-shaft";

export const bodyJoints = [
  "pelvis",
  "chest",
  "neck",
  "head",
  "leadShoulder",
  "trailShoulder",
  "leadElbow",
  "trailElbow",
  "leadWrist",
  "trailWrist",
  "leadHand",
  "trailHand",
  "leadHip",
  "trailHip",
  "leadKnee",
  "trailKnee",
  "leadAnkle",
  "trailAnkle",
  "leadHeel",
  "trailHeel",
  "leadToe",
  "trailToe",
] as const;

export type BodyJoint = (typeof bodyJoints)[number];

/** The demonstrated golfer at one moment, in the world. Lead is the side of the target (a right-handed golfer's left). */
export interface DemoPose {
  readonly body: Readonly<Record<BodyJoint, Point<"world">>>;
  /** Where the face looks. */
  readonly face: Direction;
  /** Null with empty hands. `rodEnd` is null where no rod stands out of the butt. */
  readonly club: {
    readonly butt: Point<"world">;
    readonly grip: Point<"world">;
    readonly head: Point<"world">;
    readonly toHead: Direction;
    readonly rodEnd: Point<"world"> | null;
  } | null;
}
