import { Matrix } from "ml-matrix";
import type { Matrix3 } from "./camera.ts";
import { at, errorCount } from "./filter-motion.ts";

/** How errors carry over a span of time. */
export interface Transition {
  readonly seconds: number;
  /** The shaft's turn over the span. */
  readonly rotation: Matrix3;
}

/** `F C` for the transition F and any matrix C of twelve rows: the blocks that F has, written out. */
function applyLeft(into: Float64Array, { seconds, rotation }: Transition): void {
  const [a, b, c, d, e, f, g, h, i] = rotation;
  for (let column = 0; column < errorCount; column++) {
    const read = (row: number): number => into[row * errorCount + column] ?? 0;
    const write = (row: number, value: number): void => {
      into[row * errorCount + column] = value;
    };
    for (let axis = 0; axis < 3; axis++)
      write(at.grip + axis, read(at.grip + axis) + seconds * read(at.velocity + axis));
    const [tx, ty, tz] = [read(at.turn), read(at.turn + 1), read(at.turn + 2)];
    const dx = read(at.direction) + seconds * tx;
    const dy = read(at.direction + 1) + seconds * ty;
    const dz = read(at.direction + 2) + seconds * tz;
    write(at.direction, a * dx + b * dy + c * dz);
    write(at.direction + 1, d * dx + e * dy + f * dz);
    write(at.direction + 2, g * dx + h * dy + i * dz);
    write(at.turn, a * tx + b * ty + c * tz);
    write(at.turn + 1, d * tx + e * ty + f * tz);
    write(at.turn + 2, g * tx + h * ty + i * tz);
  }
}

/** `F C Fᵀ` of a symmetric covariance. */
export function carryCovariance(covariance: Float64Array, transition: Transition): Float64Array {
  const carried = covariance.slice();
  applyLeft(carried, transition);
  transpose(carried);
  applyLeft(carried, transition);
  return carried;
}

/** `F C` as a matrix, for the smoother. */
export function carryOnce(covariance: Float64Array, transition: Transition): Matrix {
  const carried = covariance.slice();
  applyLeft(carried, transition);
  return Matrix.from1DArray(errorCount, errorCount, carried);
}

function transpose(matrix: Float64Array): void {
  for (let row = 0; row < errorCount; row++) {
    for (let column = 0; column < row; column++) {
      const one = matrix[row * errorCount + column] ?? 0;
      matrix[row * errorCount + column] = matrix[column * errorCount + row] ?? 0;
      matrix[column * errorCount + row] = one;
    }
  }
}
