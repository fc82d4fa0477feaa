import { at, type ShaftMotion } from "./filter-motion.ts";
import { worldPoint } from "./point.ts";
import { rotate, rotationFromVector } from "./rotation.ts";
import { along, dot, normalise, type Vector } from "./vector.ts";

/** The motion moved by an estimate of its errors. The angular velocity stays square to the shaft. */
export function correctMotion(motion: ShaftMotion, error: ArrayLike<number>): ShaftMotion {
  const part = (first: number): Vector => ({
    x: error[first] ?? 0,
    y: error[first + 1] ?? 0,
    z: error[first + 2] ?? 0,
  });
  const place = along(motion.grip, part(at.grip), 1);
  const turned = rotate(rotationFromVector(part(at.direction)), motion.toHead);
  const toHead = normalise(turned) ?? motion.toHead;
  const turn = along(motion.turn, part(at.turn), 1);
  return {
    ...motion,
    grip: worldPoint(place.x, place.y, place.z),
    velocity: along(motion.velocity, part(at.velocity), 1),
    toHead,
    turn: along(turn, toHead, -dot(turn, toHead)),
  };
}

/** The errors that lead from one motion to another: the way back of `correctMotion`. */
export function errorBetween(from: ShaftMotion, to: ShaftMotion): number[] {
  const { x, y, z } = from.toHead;
  const turned: Vector = {
    x: y * to.toHead.z - z * to.toHead.y,
    y: z * to.toHead.x - x * to.toHead.z,
    z: x * to.toHead.y - y * to.toHead.x,
  };
  const sine = Math.hypot(turned.x, turned.y, turned.z);
  const by = sine > 1e-9 ? Math.atan2(sine, dot(from.toHead, to.toHead)) / sine : 1;
  const change = along(to.turn, from.turn, -1);
  const square = along(change, from.toHead, -dot(change, from.toHead));
  return [
    to.grip.x - from.grip.x,
    to.grip.y - from.grip.y,
    to.grip.z - from.grip.z,
    to.velocity.x - from.velocity.x,
    to.velocity.y - from.velocity.y,
    to.velocity.z - from.velocity.z,
    turned.x * by,
    turned.y * by,
    turned.z * by,
    square.x,
    square.y,
    square.z,
  ];
}
