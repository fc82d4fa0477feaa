import { deflateRawSync, inflateRawSync } from "node:zlib";
import type { Rep } from "@overcue/shared-geometry/wire/rep";

export type Trajectory = Rep["trajectory"];

/** Units in one ms, m, m, m, rad, rad: 0.1 ms, 0.1 mm, 0.00001 rad, far below what a camera can tell. */
const perOne = [10, 1e4, 1e4, 1e4, 1e5, 1e5] as const;

/** Numbers past this many units (100 km, 29 hours, which no swing reaches) are cut off there. */
const most = 2 ** 30 - 1;

/**
 * A trajectory as differences of whole units, column by column, deflated: about a seventh of its JSON. Times count from the first sample's, which is kept
 * whole in front. What comes back is each number to half a unit.
 */
export function packTrajectory(trajectory: Trajectory): Uint8Array {
  const start = trajectory[0]?.[0] ?? 0;
  const bytes = new DataView(new ArrayBuffer(8 + trajectory.length * perOne.length * 4));
  bytes.setFloat64(0, start, true);
  let at = 8;
  for (const [column, units] of perOne.entries()) {
    let before = 0;
    for (const sample of trajectory) {
      const value = (sample[column] ?? 0) - (column === 0 ? start : 0);
      const whole = Math.max(-most, Math.min(most, Math.round(value * units)));
      bytes.setInt32(at, whole - before, true);
      before = whole;
      at += 4;
    }
  }
  return deflateRawSync(new Uint8Array(bytes.buffer));
}

/** The reverse. @throws where the bytes are not a packed trajectory of so many samples. */
export function unpackTrajectory(packed: Uint8Array, samples: number): Trajectory {
  const inflated = inflateRawSync(packed);
  const bytes = new DataView(inflated.buffer, inflated.byteOffset, inflated.byteLength);
  if (bytes.byteLength !== 8 + samples * perOne.length * 4)
    throw new RangeError("a packed trajectory has the wrong size");
  const start = bytes.getFloat64(0, true);
  const columns = perOne.map((units, column) => {
    let whole = 0;
    return Array.from({ length: samples }, (_, row) => {
      whole += bytes.getInt32(8 + (column * samples + row) * 4, true);
      return whole / units + (column === 0 ? start : 0);
    });
  });
  const at = (column: number, row: number): number => columns[column]?.[row] ?? 0;
  return Array.from({ length: samples }, (_, row) => [
    at(0, row),
    at(1, row),
    at(2, row),
    at(3, row),
    at(4, row),
    at(5, row),
  ]);
}
