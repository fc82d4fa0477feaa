import type { LayingSpread } from "@overcue/shared-geometry/station-model";
import { measureRep, type RepMeasure } from "./measure-rep.ts";

/** So many random reps from a seed on; those whose station is refused are left out. */
export function measureReps(count: number, laying: LayingSpread, from = 1): RepMeasure[] {
  return Array.from({ length: count }, (_, index) => measureRep(from + index, laying)).filter((rep) => rep !== null);
}
