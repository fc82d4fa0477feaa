import { along, type Vector } from "@overcue/shared-geometry/vector";
import type { BodyMeasures } from "./body-measures.ts";
import { twoBoneJoint } from "./two-bone-joint.ts";

export interface Foot {
  readonly heel: Vector;
  readonly ankle: Vector;
  readonly toe: Vector;
}

export interface Leg extends Foot {
  readonly knee: Vector;
}

/** A foot on its toe: `heel` as planted, pointing by `yaw` (0: at the ball line, positive: towards the target), the heel lifted by metres. */
export function placeFoot(toe: Vector, yaw: number, heelLift: number, measures: BodyMeasures): Foot {
  const lift = Math.asin(Math.min(0.95, Math.max(0, heelLift / measures.foot)));
  const back = { x: -Math.sin(yaw) * Math.cos(lift), y: Math.cos(yaw) * Math.cos(lift), z: Math.sin(lift) };
  const heel = along(toe, back, measures.foot);
  const up = { x: Math.sin(yaw) * Math.sin(lift), y: -Math.cos(yaw) * Math.sin(lift), z: Math.cos(lift) };
  const ankle = along(along(heel, back, -measures.heelToAnkle), up, measures.ankle);
  return { heel, ankle, toe };
}

/** A leg from the hip to a planted foot; the knee bends the way that the foot points. */
export function placeLeg(hip: Vector, foot: Foot, yaw: number, measures: BodyMeasures): Leg {
  const ahead = { x: Math.sin(yaw), y: -Math.cos(yaw), z: 0.1 };
  const { joint } = twoBoneJoint(hip, foot.ankle, { upper: measures.thigh, lower: measures.shank }, ahead);
  return { ...foot, knee: joint };
}
