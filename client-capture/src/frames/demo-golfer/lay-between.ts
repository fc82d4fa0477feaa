import { Vector3, type Object3D } from "three";
import type { Vector } from "@overcue/shared-geometry/vector";

const up = new Vector3(0, 1, 0);
const direction = new Vector3();

/** Turns an object that was built along its +y so that it starts at `from` and points at `to`. */
export function layBetween(object: Object3D, from: Vector, to: Vector): void {
  direction.set(to.x - from.x, to.y - from.y, to.z - from.z).normalize();
  object.position.set(from.x, from.y, from.z);
  object.quaternion.setFromUnitVectors(up, direction);
}
