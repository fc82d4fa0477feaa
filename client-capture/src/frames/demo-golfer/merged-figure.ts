import {
  BufferAttribute,
  BufferGeometry,
  Color,
  Matrix3,
  Mesh,
  MeshLambertMaterial,
  Vector3,
  type Object3D,
} from "three";

/**
 * Many posed meshes drawn as one: their corners are put in place here and handed over in a single call, which software
 * renderers and small phones need more than they need cheap corners. Parts keep their colour; their number is fixed.
 */
export class MergedFigure {
  readonly mesh: Mesh;
  readonly #posed: Object3D;
  readonly #places: BufferAttribute;
  readonly #normals: BufferAttribute;

  constructor(posed: Object3D) {
    this.#posed = posed;
    const parts = meshesOf(posed);
    const corners = parts.reduce((sum, part) => sum + part.geometry.getAttribute("position").count, 0);
    this.#places = new BufferAttribute(new Float32Array(corners * 3), 3);
    this.#normals = new BufferAttribute(new Float32Array(corners * 3), 3);
    const geometry = new BufferGeometry();
    geometry.setAttribute("position", this.#places);
    geometry.setAttribute("normal", this.#normals);
    geometry.setAttribute("color", coloursOf(parts, corners));
    geometry.setIndex(indexOf(parts));
    this.mesh = new Mesh(geometry, new MeshLambertMaterial({ vertexColors: true }));
    this.mesh.frustumCulled = false;
  }

  /** Call when the parts have been posed; an invisible part shrinks to nothing. */
  update(): void {
    this.#posed.updateMatrixWorld(true);
    const place = new Vector3();
    const turn = new Matrix3();
    let corner = 0;
    for (const part of meshesOf(this.#posed)) {
      const places = part.geometry.getAttribute("position");
      const normals = part.geometry.getAttribute("normal");
      turn.getNormalMatrix(part.matrixWorld);
      const seen = isSeen(part);
      for (let k = 0; k < places.count; k++, corner++) {
        place.fromBufferAttribute(places, k).applyMatrix4(part.matrixWorld);
        if (!seen) place.set(0, 0, -1);
        this.#places.setXYZ(corner, place.x, place.y, place.z);
        place.fromBufferAttribute(normals, k).applyMatrix3(turn).normalize();
        this.#normals.setXYZ(corner, place.x, place.y, place.z);
      }
    }
    this.#places.needsUpdate = true;
    this.#normals.needsUpdate = true;
  }
}

function meshesOf(object: Object3D): Mesh[] {
  const meshes: Mesh[] = [];
  object.traverse((part) => {
    if (part instanceof Mesh) meshes.push(part as Mesh);
  });
  return meshes;
}

function isSeen(part: Object3D): boolean {
  for (let at: Object3D | null = part; at; at = at.parent) if (!at.visible) return false;
  return true;
}

function coloursOf(parts: readonly Mesh[], corners: number): BufferAttribute {
  const colours = new BufferAttribute(new Float32Array(corners * 3), 3);
  let corner = 0;
  for (const { material, geometry } of parts) {
    const colour = material instanceof MeshLambertMaterial ? material.color : new Color(0xff00ff);
    for (let k = 0; k < geometry.getAttribute("position").count; k++)
      colours.setXYZ(corner++, colour.r, colour.g, colour.b);
  }
  return colours;
}

function indexOf(parts: readonly Mesh[]): number[] {
  const index: number[] = [];
  let first = 0;
  for (const { geometry } of parts) {
    const own = geometry.getIndex();
    const { count } = geometry.getAttribute("position");
    for (let k = 0; k < (own ? own.count : count); k++) index.push(first + (own ? own.getX(k) : k));
    first += count;
  }
  return index;
}
