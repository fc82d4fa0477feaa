import { angleBetween } from "./angle.ts";
import { anglesOf } from "./shaft-angles.ts";
import type { ShaftCovariance, ShaftInWorld } from "./world-shaft.ts";

type PlacedShaft = Pick<ShaftInWorld, "grip" | "toHead">;

/** Half the way from one placed shaft to another as grip x, y, z, azimuth, elevation: what one sd of one error does. */
export function halfWay(down: PlacedShaft, up: PlacedShaft): number[] {
  const a = anglesOf(down.toHead);
  const b = anglesOf(up.toHead);
  return [
    (up.grip.x - down.grip.x) / 2,
    (up.grip.y - down.grip.y) / 2,
    (up.grip.z - down.grip.z) / 2,
    angleBetween(a.azimuth, b.azimuth) / 2,
    (b.elevation - a.elevation) / 2,
  ];
}

/** `covariance` plus the squares of independent errors, one column of five an error. */
export function addSquares(covariance: ShaftCovariance, columns: readonly (readonly number[])[]): ShaftCovariance {
  const sum = Array.from(covariance);
  for (const column of columns) {
    for (let i = 0; i < 5; i++) {
      for (let j = 0; j < 5; j++) sum[5 * i + j] = (sum[5 * i + j] ?? 0) + (column[i] ?? 0) * (column[j] ?? 0);
    }
  }
  return sum;
}

export const noCovariance: ShaftCovariance = new Array<number>(25).fill(0);
