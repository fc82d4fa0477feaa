import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { RidgeMap } from "./ridge-map.ts";
import { stationTuning } from "./station-tuning.ts";

/** A straight piece of the picture that stands out along all its length in one colour. */
export interface LineCandidate {
  readonly near: Point<"image">;
  readonly far: Point<"image">;
  /** In sds of what the ground gives by chance. */
  readonly score: number;
}

/**
 * Straight pieces of a given height that stand out from what lies beside them: for each slope the differences are summed down the sheared columns, so
 * that a stick, of one colour all along, adds up while grass cancels. The best first, those that lie on a better one left out.
 */
export function lineCandidates(map: RidgeMap, pieceRows: number, most: number): LineCandidate[] {
  const found: LineCandidate[] = [];
  const { steepest, slopeStep } = stationTuning;
  const limit = Math.tan((steepest * Math.PI) / 180);
  // Slopes even in angle: half a pixel's shift over the piece near upright, coarser towards level.
  for (let angle = -steepest; angle <= steepest; angle += slopeStep) {
    const slope = Math.tan((angle * Math.PI) / 180);
    if (Math.abs(slope) <= limit) sweep(map, pieceRows, slope, found);
  }
  found.sort((a, b) => b.score - a.score);
  const kept: LineCandidate[] = [];
  for (const candidate of found) {
    if (kept.length >= most) break;
    if (!kept.some((better) => liesOn(candidate, better))) kept.push(candidate);
  }
  return kept;
}

function sweep(
  { width, firstRow, rows, values }: RidgeMap,
  pieceRows: number,
  slope: number,
  found: LineCandidate[],
): void {
  const shift = Math.ceil(Math.abs(slope) * rows);
  const columns = width + 2 * shift;
  const sums = new Float32Array(columns * 3);
  const scores = new Float32Array(columns);
  const normal = 1 / Math.sqrt(pieceRows);
  const add = (row: number, sign: number): void => {
    const offset = Math.round(slope * row) + shift;
    const from = row * width * 3;
    const to = offset * 3;
    for (let index = 0; index < width * 3; index++)
      sums[to + index] = (sums[to + index] ?? 0) + sign * (values[from + index] ?? 0);
  };
  const step = Math.max(4, pieceRows >> 2);
  for (let row = 0; row < rows; row++) {
    add(row, 1);
    if (row >= pieceRows) add(row - pieceRows, -1);
    if (row < pieceRows - 1 || (row + 1 - pieceRows) % step !== 0) continue;
    for (let column = 0; column < columns; column++) {
      const at = column * 3;
      scores[column] = Math.hypot(sums[at] ?? 0, sums[at + 1] ?? 0, sums[at + 2] ?? 0) * normal;
    }
    for (let column = 2; column < columns - 2; column++) {
      const score = scores[column] ?? 0;
      if (score < stationTuning.leastScore) continue;
      if (score < (scores[column - 1] ?? 0) || score < (scores[column + 1] ?? 0)) continue;
      const xAt = (atRow: number): number => column - shift - slope * atRow + 0.5;
      const top = row + 1 - pieceRows;
      const [x1, x2] = [xAt(top), xAt(row)];
      if (Math.min(x1, x2) < 0 || Math.max(x1, x2) >= width) continue;
      found.push({ score, far: imagePoint(x1, firstRow + top + 0.5), near: imagePoint(x2, firstRow + row + 0.5) });
    }
  }
}

/** Whether a piece lies along another: both of its ends within a few pixels of the other's line, and the two overlap or touch. */
function liesOn(piece: LineCandidate, other: LineCandidate): boolean {
  const dx = other.far.x - other.near.x;
  const dy = other.far.y - other.near.y;
  const length = Math.hypot(dx, dy);
  const place = (point: Point<"image">): { across: number; along: number } => ({
    across: Math.abs((point.x - other.near.x) * dy - (point.y - other.near.y) * dx) / length,
    along: ((point.x - other.near.x) * dx + (point.y - other.near.y) * dy) / length,
  });
  const [a, b] = [place(piece.near), place(piece.far)];
  return (
    a.across < 5 &&
    b.across < 5 &&
    Math.max(a.along, b.along) > -length * 0.5 &&
    Math.min(a.along, b.along) < length * 1.5
  );
}
