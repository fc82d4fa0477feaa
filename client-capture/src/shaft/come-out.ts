import type { ShaftTuning } from "./shaft-tuning.ts";

/** How far the shaft has come out of end-on, 0 to 1, and what of that the next picture is to weigh. Changed in place. */
export interface Emergence {
  out: number;
  fresh: number;
}

/** `long`: how far the shaft is seen at its length now. What it came out farther than before is weighed once; what is not seen for long comes out anew. */
export function comeOut(emergence: Emergence, long: number, seconds: number, tuning: ShaftTuning): void {
  emergence.fresh = Math.max(0, long - emergence.out);
  emergence.out = Math.max(long, emergence.out - seconds / tuning.outMemory);
}
