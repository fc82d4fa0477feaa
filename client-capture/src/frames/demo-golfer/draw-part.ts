import { Mesh, MeshLambertMaterial, type BufferGeometry } from "three";

const materials = new Map<number, MeshLambertMaterial>();

/** A mesh in one of the plain colours; materials are shared. */
export function drawPart(geometry: BufferGeometry, colour: number): Mesh {
  let material = materials.get(colour);
  if (!material) {
    material = new MeshLambertMaterial({ color: colour });
    materials.set(colour, material);
  }
  const mesh = new Mesh(geometry, material);
  mesh.frustumCulled = false;
  return mesh;
}
