import type { Matrix3 } from "./camera.ts";
import type { Vector } from "./vector.ts";

/** The rotation by a vector's length (radians) about its direction (Rodrigues' formula); a zero vector gives the identity. */
export function rotationFromVector(turn: Vector): Matrix3 {
  const { x, y, z } = turn;
  const squared = x * x + y * y + z * z;
  const angle = Math.sqrt(squared);
  const a = angle < 1e-8 ? 1 : Math.sin(angle) / angle;
  const b = angle < 1e-8 ? 0.5 : (1 - Math.cos(angle)) / squared;
  return [
    1 - b * (y * y + z * z),
    b * x * y - a * z,
    b * x * z + a * y,
    b * x * y + a * z,
    1 - b * (x * x + z * z),
    b * y * z - a * x,
    b * x * z - a * y,
    b * y * z + a * x,
    1 - b * (x * x + y * y),
  ];
}

export function multiply(a: Matrix3, b: Matrix3): Matrix3 {
  const [a0, a1, a2, a3, a4, a5, a6, a7, a8] = a;
  const [b0, b1, b2, b3, b4, b5, b6, b7, b8] = b;
  return [
    a0 * b0 + a1 * b3 + a2 * b6,
    a0 * b1 + a1 * b4 + a2 * b7,
    a0 * b2 + a1 * b5 + a2 * b8,
    a3 * b0 + a4 * b3 + a5 * b6,
    a3 * b1 + a4 * b4 + a5 * b7,
    a3 * b2 + a4 * b5 + a5 * b8,
    a6 * b0 + a7 * b3 + a8 * b6,
    a6 * b1 + a7 * b4 + a8 * b7,
    a6 * b2 + a7 * b5 + a8 * b8,
  ];
}

/** A vector turned by a rotation. */
export function rotate(rotation: Matrix3, v: Vector): Vector {
  const [a, b, c, d, e, f, g, h, i] = rotation;
  return { x: a * v.x + b * v.y + c * v.z, y: d * v.x + e * v.y + f * v.z, z: g * v.x + h * v.y + i * v.z };
}

/** Turn between two rotations, radians in [0, pi]. */
export function angleApart(a: Matrix3, b: Matrix3): number {
  const trace = a.reduce((sum, value, index) => sum + value * (b[index] ?? 0), 0);
  return Math.acos(Math.min(1, Math.max(-1, (trace - 1) / 2)));
}
