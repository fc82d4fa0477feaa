import { Group, Matrix4, SphereGeometry, Vector3 } from "three";
import type { DemoPose } from "../../demo-motion/demo-pose.ts";
import { demoColours } from "./demo-colours.ts";
import { drawPart } from "./draw-part.ts";
import { limbGeometry } from "./limb-geometry.ts";

/** Head, hair and cap, built looking along +z with +y up. */
export class HeadModel {
  readonly group = new Group();
  readonly #basis = new Matrix4();

  constructor(size: number) {
    const { skin, hair, cap } = demoColours;
    const ball = (radius: number, colour: number, scale: Vector3, at: Vector3) => {
      const part = drawPart(new SphereGeometry(radius, radius > 0.05 ? 14 : 6, radius > 0.05 ? 9 : 4), colour);
      part.scale.copy(scale);
      part.position.copy(at);
      this.group.add(part);
    };
    ball(0.1, skin, new Vector3(0.78, 1.12, 0.95), new Vector3(0, 0, 0));
    ball(0.1, hair, new Vector3(0.82, 0.72, 0.92), new Vector3(0, 0.012, -0.012));
    ball(0.018, skin, new Vector3(0.8, 1.1, 1.2), new Vector3(0, -0.01, 0.096));
    for (const side of [-1, 1]) {
      ball(0.02, skin, new Vector3(0.5, 1.3, 1), new Vector3(0.08 * side, -0.005, 0));
      ball(0.011, hair, new Vector3(1.2, 0.8, 0.6), new Vector3(0.03 * side, 0.02, 0.086));
    }
    ball(0.02, 0xa8705a, new Vector3(1.1, 0.35, 0.5), new Vector3(0, -0.052, 0.086));
    const crown = drawPart(new SphereGeometry(0.104, 14, 5, 0, 2 * Math.PI, 0, Math.PI / 2), cap);
    crown.scale.set(0.84, 0.86, 0.98);
    crown.position.set(0, 0.034, -0.004);
    const brim = drawPart(
      limbGeometry(0.06, [
        [0, 0.068],
        [1, 0.055],
      ]),
      cap,
    );
    brim.rotation.x = Math.PI / 2 + 0.22;
    brim.scale.set(1, 1, 0.12);
    brim.position.set(0, 0.042, 0.06);
    this.group.add(crown, brim);
    this.group.scale.setScalar(size);
    this.group.matrixAutoUpdate = false;
  }

  pose({ body, face }: DemoPose): void {
    const ahead = new Vector3(face.x, face.y, face.z);
    const up = new Vector3(body.head.x - body.neck.x, body.head.y - body.neck.y, body.head.z - body.neck.z);
    up.addScaledVector(ahead, -up.dot(ahead)).normalize();
    const across = new Vector3().crossVectors(up, ahead);
    this.#basis.makeBasis(across, up, ahead).setPosition(body.head.x, body.head.y, body.head.z);
    this.group.matrix.copy(this.#basis).scale(this.group.scale);
    this.group.matrixWorldNeedsUpdate = true;
  }
}
