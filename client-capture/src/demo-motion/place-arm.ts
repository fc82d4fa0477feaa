import { along, lengthOf, normalise, subtract, type Vector } from "@overcue/shared-geometry/vector";
import type { BodyMeasures } from "./body-measures.ts";
import { twoBoneJoint } from "./two-bone-joint.ts";

export interface Arm {
  readonly shoulder: Vector;
  readonly elbow: Vector;
  readonly wrist: Vector;
}

/**
 * An arm to a hand's given place. Its bones keep their lengths: where the hand is farther than the arm reaches, the shoulder
 * blade gives way towards it, as it does on people.
 */
export function placeArm(shoulder: Vector, hand: Vector, elbowTowards: Vector, measures: BodyMeasures): Arm {
  const reach = (measures.upperArm + measures.forearm) * 0.999;
  const line = subtract(shoulder, hand);
  const axis = normalise(line) ?? { x: 0, y: 0, z: 1 };
  const tooFar = lengthOf(line) - measures.hand - reach;
  const given = along(shoulder, axis, -giveWay(tooFar));
  const wrist = along(hand, axis, measures.hand);
  const { joint } = twoBoneJoint(given, wrist, { upper: measures.upperArm, lower: measures.forearm }, elbowTowards);
  return { shoulder: given, elbow: joint, wrist };
}

/** max(0, excess), rounded off smoothly above it (never less than the excess), so that the shoulder does not jerk. */
function giveWay(excess: number): number {
  const soft = 0.004;
  return (excess + Math.sqrt(excess * excess + soft * soft)) / 2;
}
