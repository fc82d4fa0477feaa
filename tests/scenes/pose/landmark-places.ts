import type { DemoPose, BodyJoint } from "@overcue/client-capture/demo-motion/demo-pose";
import { add, along, cross, normalise, scale, type Vector } from "@overcue/shared-geometry/vector";

/** Height of the middle of a shoe over its sole, metres: so high the real model sees heels and toes of filmed golfers, to a centimetre or so. */
const shoeMiddle = 0.04;

/** The 33 landmarks of a golfer's body in the world, in MediaPipe's published order: left is odd from 11 on. */
export function landmarkPlaces(pose: DemoPose, handed: "right" | "left"): readonly Vector[] {
  const { body, face } = pose;
  const left = handed === "right" ? "lead" : "trail";
  const right = handed === "right" ? "trail" : "lead";
  const joint = (
    side: "lead" | "trail",
    name: "Shoulder" | "Elbow" | "Wrist" | "Hand" | "Hip" | "Knee" | "Ankle" | "Heel" | "Toe",
  ): Vector => body[`${side}${name}` satisfies BodyJoint];
  const up = { x: 0, y: 0, z: 1 };
  const aside = scale(normalise(cross(up, face)) ?? { x: 1, y: 0, z: 0 }, handed === "right" ? 1 : -1);
  const onFace = (forward: number, out: number, rise: number): Vector =>
    add(add(along(body.head, face, forward), scale(aside, out)), scale(up, rise));
  const finger = (side: "lead" | "trail", past: number): Vector => {
    const wrist = joint(side, "Wrist");
    const hand = joint(side, "Hand");
    return {
      x: wrist.x + past * (hand.x - wrist.x),
      y: wrist.y + past * (hand.y - wrist.y),
      z: wrist.z + past * (hand.z - wrist.z),
    };
  };
  const pairs = (name: Parameters<typeof joint>[1]): readonly Vector[] => [joint(left, name), joint(right, name)];
  return [
    onFace(0.1, 0, -0.02),
    ...[0.02, 0.035, 0.05].map((out) => onFace(0.085, out, 0.02)),
    ...[0.02, 0.035, 0.05].map((out) => onFace(0.085, -out, 0.02)),
    onFace(0, 0.075, 0),
    onFace(0, -0.075, 0),
    onFace(0.085, 0.025, -0.06),
    onFace(0.085, -0.025, -0.06),
    ...pairs("Shoulder"),
    ...pairs("Elbow"),
    ...pairs("Wrist"),
    ...[1.25, 1.35, 1.05].flatMap((past) => [finger(left, past), finger(right, past)]),
    ...pairs("Hip"),
    ...pairs("Knee"),
    ...pairs("Ankle"),
    ...[...pairs("Heel"), ...pairs("Toe")].map((sole) => add(sole, scale(up, shoeMiddle))),
  ];
}
