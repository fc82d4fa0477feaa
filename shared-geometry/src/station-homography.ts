import { Matrix, SVD } from "ml-matrix";
import type { Matrix3 } from "./camera.ts";
import type { Point } from "./point.ts";

/** A place on the ground and where it is seen. */
export interface GroundMatch {
  readonly ground: Point<"ground">;
  readonly image: Point<"image">;
}

/**
 * The homography that takes the ground to the picture, from four or more places (normalised direct linear transform:
 * Hartley and Zisserman, 2nd ed., algorithm 4.2), scaled so that its last number is 1. Null where the places do not fix one.
 */
export function homographyFrom(matches: readonly GroundMatch[]): Matrix3 | null {
  if (matches.length < 4) return null;
  const ground = normaliser(matches.map((match) => match.ground));
  const image = normaliser(matches.map((match) => match.image));
  const rows: number[][] = [];
  for (const match of matches) {
    const x = ground.scale * (match.ground.x - ground.x);
    const y = ground.scale * (match.ground.y - ground.y);
    const u = image.scale * (match.image.x - image.x);
    const v = image.scale * (match.image.y - image.y);
    rows.push([-x, -y, -1, 0, 0, 0, u * x, u * y, u], [0, 0, 0, -x, -y, -1, v * x, v * y, v]);
  }
  while (rows.length < 9) rows.push(new Array<number>(9).fill(0));
  const solved = new SVD(new Matrix(rows), { autoTranspose: true });
  const singular = solved.diagonal;
  if (!((singular[7] ?? 0) > 1e-9 * (singular[0] ?? 0))) return null;
  const h = Matrix.from1DArray(3, 3, solved.rightSingularVectors.getColumn(8));
  const toGround = new Matrix([
    [ground.scale, 0, -ground.scale * ground.x],
    [0, ground.scale, -ground.scale * ground.y],
    [0, 0, 1],
  ]);
  const fromImage = new Matrix([
    [1 / image.scale, 0, image.x],
    [0, 1 / image.scale, image.y],
    [0, 0, 1],
  ]);
  const whole = fromImage.mmul(h).mmul(toGround);
  const last = whole.get(2, 2);
  if (Math.abs(last) < 1e-12) return null;
  const n = (row: number, column: number): number => whole.get(row, column) / last;
  return [n(0, 0), n(0, 1), n(0, 2), n(1, 0), n(1, 1), n(1, 2), n(2, 0), n(2, 1), n(2, 2)];
}

function normaliser(points: readonly { readonly x: number; readonly y: number }[]) {
  const x = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const y = points.reduce((sum, point) => sum + point.y, 0) / points.length;
  const spread = points.reduce((sum, point) => sum + Math.hypot(point.x - x, point.y - y), 0) / points.length;
  return { x, y, scale: spread > 0 ? Math.SQRT2 / spread : 1 };
}
