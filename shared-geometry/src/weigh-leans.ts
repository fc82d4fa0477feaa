import { followBack, followPaths, oddsOfLeans, startPaths, type LeanPaths } from "./lean-paths.ts";
import { leanCount, leanOf, type LeanNode } from "./lean-node.ts";
import { leaning, type ShaftView } from "./view-shaft.ts";
import { dot } from "./vector.ts";
import type { Direction } from "./world-shaft.ts";

/** What all pictures say of the lean in one of them. */
export interface WeighedLean {
  readonly node: LeanNode;
  /** Odds of each lean; they sum to 1. */
  readonly odds: Float64Array;
  /** Direction of the likeliest leans' middle, and how wide they lie about it, radians. */
  readonly toHead: Direction;
  readonly sd: number;
}

/** Leans this near to the likeliest one are the same answer, cells. */
const sameAnswer = 6;

/** The leans of a row of pictures, each in the light of all of them (forward-backward algorithm over pairs of leans). */
export function weighLeans(nodes: readonly LeanNode[]): WeighedLean[] {
  const [first, ...rest] = nodes;
  if (!first) return [];
  const forward: LeanPaths[] = [startPaths(first)];
  let newest = forward[0];
  for (const node of rest) {
    if (!newest) break;
    newest = followPaths(newest, node);
    forward.push(newest);
  }
  let after: Float64Array | null = null;
  let next: LeanPaths | null = null;
  const weighed: WeighedLean[] = [];
  for (const paths of forward.toReversed()) {
    after = next === null ? null : followBack(paths, next, after ?? new Float64Array(leanCount * leanCount).fill(1));
    weighed.push(weighedOf(paths.node, oddsOfLeans(paths, after)));
    next = paths;
  }
  return weighed.toReversed();
}

export function weighedOf(node: LeanNode, odds: Float64Array): WeighedLean {
  let likeliest = 0;
  odds.forEach((value, cell) => {
    if (value > (odds[likeliest] ?? 0)) likeliest = cell;
  });
  let mass = 0;
  let mean = 0;
  let square = 0;
  for (
    let cell = Math.max(0, likeliest - sameAnswer);
    cell <= Math.min(leanCount - 1, likeliest + sameAnswer);
    cell++
  ) {
    const value = odds[cell] ?? 0;
    mass += value;
    mean += value * leanOf(cell);
    square += value * leanOf(cell) ** 2;
  }
  mean /= mass;
  return { node, odds, toHead: leaning(node.view, mean), sd: Math.sqrt(Math.max(0, square / mass - mean * mean)) };
}

/** The lean of a direction in a picture's plane of leans. */
export const leanIn = (toHead: Direction, { sight, square }: Pick<ShaftView, "sight" | "square">): number =>
  Math.atan2(dot(toHead, sight), dot(toHead, square));
