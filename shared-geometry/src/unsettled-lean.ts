import { leanCount, leanOf } from "./lean-node.ts";
import { leanIn, type WeighedLean } from "./weigh-leans.ts";
import type { Direction } from "./world-shaft.ts";

/** Leans nearer than this to an answer are the answer itself, radians; and so are those within so many of its sds. */
const sameLean = 0.25;
const sameSds = 2.5;

/** How far the leans that may be true beside an answer lie from it, mean square over all odds, square radians. `sd`: of the answer's own lean. */
export function unsettledLean({ node, odds }: WeighedLean, answer: Direction, sd: number): number {
  const own = leanIn(answer, node.view);
  const same = Math.max(sameLean, sameSds * sd);
  let sum = 0;
  for (let cell = 0; cell < leanCount; cell++) {
    const apart = Math.abs(leanOf(cell) - own);
    if (apart > same) sum += (odds[cell] ?? 0) * apart * apart;
  }
  return sum;
}
