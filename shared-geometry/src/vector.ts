/** Three numbers with a length and a direction: the arithmetic of the world frame. Pure, no edge cases but the stated ones. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const add = (a: Vector, b: Vector): Vector => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
export const subtract = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const scale = (a: Vector, by: number): Vector => ({ x: a.x * by, y: a.y * by, z: a.z * by });
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const lengthOf = (a: Vector): number => Math.sqrt(dot(a, a));

/** Along `from + by * direction`. */
export const along = (from: Vector, direction: Vector, by: number): Vector => ({
  x: from.x + direction.x * by,
  y: from.y + direction.y * by,
  z: from.z + direction.z * by,
});

export const cross = (a: Vector, b: Vector): Vector => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/** Unit length; null for a vector too short (under 1e-12) to have a direction. */
export function normalise(a: Vector): Vector | null {
  const length = lengthOf(a);
  return length < 1e-12 ? null : scale(a, 1 / length);
}
