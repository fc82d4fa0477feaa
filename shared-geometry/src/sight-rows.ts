import { at, errorCount } from "./filter-motion.ts";
import type { Direction, ShaftInWorld } from "./world-shaft.ts";

/** One sight is known no better than this in any of its numbers, metres and radians: keeps its spread invertible. */
const least = 1e-4;

/**
 * The five numbers of a sight as rows over a motion's errors: grip x, y, z (metres), then the turns across and up (radians, about axes square to the shaft
 * and to each other). Straight up, across is any way.
 */
export function sightRows({ x, y, z }: Direction): readonly Float64Array[] {
  const level = Math.hypot(x, y);
  const [ux, uy] = level > 1e-9 ? [y / level, -x / level] : [0, -1];
  const across = [uy * z, -ux * z, ux * y - uy * x];
  const rows = [0, 1, 2].map((axis) => one(at.grip + axis, [1]));
  rows.push(one(at.direction, across), one(at.direction, [ux, uy, 0]));
  return rows;
}

/** The spread of those five numbers, five by five, row-major. */
export function sightSpread({ toHead, covariance }: ShaftInWorld): Float64Array {
  const level = Math.hypot(toHead.x, toHead.y);
  const spread = Float64Array.from(covariance, (value, index) => {
    const row = Math.floor(index / 5);
    return value * (row === 3 ? level : 1) * (index % 5 === 3 ? level : 1);
  });
  for (let i = 0; i < 5; i++) spread[6 * i] = (spread[6 * i] ?? 0) + least * least;
  return spread;
}

function one(first: number, values: readonly number[]): Float64Array {
  const row = new Float64Array(errorCount);
  row.set(values, first);
  return row;
}
