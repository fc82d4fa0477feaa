import { BufferAttribute, BufferGeometry, Vector3 } from "three";
import type { DemoPose } from "../../demo-motion/demo-pose.ts";

/** One cut through the trunk: metres up the spine from the hips' middle, half width, half depth, and how far back its middle lies. */
export type TrunkRing = readonly [up: number, halfWidth: number, halfDepth: number, back: number];

const around = 14;
/** The trunk twists between these heights on the spine, metres for a golfer of 1.78 m. */
const twistFrom = 0.02;
const twistTo = 0.42;

/** A skin over rings of the trunk that lean and twist with hips and shoulders; call `pose` for every picture. */
export class TorsoLoft {
  readonly geometry = new BufferGeometry();
  readonly #rings: readonly TrunkRing[];
  readonly #size: number;
  readonly #places: BufferAttribute;

  constructor(rings: readonly TrunkRing[], size: number) {
    this.#rings = rings;
    this.#size = size;
    this.#places = new BufferAttribute(new Float32Array(rings.length * around * 3 + 6), 3);
    this.geometry.setAttribute("position", this.#places);
    this.geometry.setIndex(skinOf(rings.length));
  }

  pose({ body }: DemoPose): void {
    const at = ({ x, y, z }: { x: number; y: number; z: number }): Vector3 => new Vector3(x, y, z);
    const pelvis = at(body.pelvis);
    const spine = at(body.chest).sub(pelvis).normalize();
    const hips = at(body.leadHip).sub(at(body.trailHip)).normalize();
    const shoulders = at(body.leadShoulder).sub(at(body.trailShoulder)).normalize();
    const across = new Vector3();
    const ahead = new Vector3();
    const centre = new Vector3();
    const point = new Vector3();
    const put = (index: number, from: Vector3): void => {
      this.#places.setXYZ(index, from.x, from.y, from.z);
    };
    this.#rings.forEach(([up, halfWidth, halfDepth, back], ring) => {
      const share = Math.min(1, Math.max(0, (up - twistFrom) / (twistTo - twistFrom)));
      const twist = share * share * (3 - 2 * share);
      across.copy(hips).lerp(shoulders, twist);
      across.addScaledVector(spine, -across.dot(spine)).normalize();
      ahead.crossVectors(across, spine);
      centre
        .copy(pelvis)
        .addScaledVector(spine, up * this.#size)
        .addScaledVector(ahead, -back * this.#size);
      for (let k = 0; k < around; k++) {
        const turn = (k / around) * 2 * Math.PI;
        point
          .copy(centre)
          .addScaledVector(across, rounded(Math.cos(turn)) * halfWidth * this.#size)
          .addScaledVector(ahead, rounded(Math.sin(turn)) * halfDepth * this.#size);
        put(ring * around + k, point);
      }
      if (ring === 0) put(this.#rings.length * around, centre);
      if (ring === this.#rings.length - 1) put(this.#rings.length * around + 1, centre);
    });
    this.#places.needsUpdate = true;
    this.geometry.computeVertexNormals();
    this.geometry.computeBoundingSphere();
  }
}

/** A circle swollen a little towards a square, as a trunk is. */
const rounded = (value: number): number => Math.sign(value) * Math.abs(value) ** 0.85;

function skinOf(rings: number): number[] {
  const index: number[] = [];
  const bottom = rings * around;
  for (let k = 0; k < around; k++) {
    const next = (k + 1) % around;
    for (let ring = 0; ring < rings - 1; ring++) {
      const low = ring * around;
      const high = low + around;
      index.push(low + k, high + next, low + next, low + k, high + k, high + next);
    }
    index.push(bottom, k, next);
    const last = (rings - 1) * around;
    index.push(bottom + 1, last + next, last + k);
  }
  return index;
}
