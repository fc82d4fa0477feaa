import { add, along, cross, dot, normalise, scale, subtract, type Vector } from "@overcue/shared-geometry/vector";
import type { BodyMeasures } from "./body-measures.ts";
import type { KeyPose } from "./key-pose.ts";

const right: Vector = { x: 1, y: 0, z: 0 };

export interface Torso {
  readonly pelvis: Vector;
  readonly chest: Vector;
  readonly neck: Vector;
  readonly head: Vector;
  readonly leadShoulder: Vector;
  readonly trailShoulder: Vector;
  readonly leadHip: Vector;
  readonly trailHip: Vector;
  readonly face: Vector;
  /** Out of the breastbone. */
  readonly front: Vector;
}

/** Hips, shoulders and head of a posture, in the golfer's own frame: the spine leans and bends, shoulders turn about it. */
export function placeTorso(pose: KeyPose, measures: BodyMeasures): Torso {
  const pelvis = { x: pose.pelvisX, y: pose.pelvisY, z: pose.pelvisZ };
  const spine = {
    x: -Math.sin(pose.sideBend),
    y: -Math.cos(pose.sideBend) * Math.sin(pose.tilt),
    z: Math.cos(pose.sideBend) * Math.cos(pose.tilt),
  };
  const level = normalise(subtract(right, scale(spine, dot(right, spine)))) ?? right;
  const ahead = cross(level, spine);
  const turned = (angle: number): Vector => add(scale(level, Math.cos(angle)), scale(ahead, Math.sin(angle)));
  const across = turned(pose.shoulderTurn);
  const hips = { x: Math.cos(pose.hipTurn), y: -Math.sin(pose.hipTurn), z: 0 };
  const chest = along(pelvis, spine, measures.trunk);
  const neck = along(chest, spine, measures.neckRise);
  const rise = normalise({ x: spine.x, y: spine.y, z: spine.z + 0.15 }) ?? spine;
  const look = pose.faceYaw;
  const gaze = add(scale(ahead, Math.cos(look)), scale(level, -Math.sin(look)));
  const face = normalise({ x: gaze.x, y: gaze.y, z: gaze.z + pose.faceLift }) ?? ahead;
  return {
    pelvis,
    chest,
    neck,
    head: along(neck, rise, measures.headRise),
    leadShoulder: along(chest, across, measures.halfShoulders),
    trailShoulder: along(chest, across, -measures.halfShoulders),
    leadHip: along(pelvis, hips, measures.halfHips),
    trailHip: along(pelvis, hips, -measures.halfHips),
    face,
    front: cross(across, spine),
  };
}
