import { filterTuning } from "./filter-tuning.ts";
import { leanCount, leanStep, type LeanNode } from "./lean-node.ts";
import { goOn, oddsAfter, type EvenTurn } from "./lean-turn.ts";

/** Odds of every pair of leans, of the picture before (rows) and of this one (columns), by all pictures so far; one row where there is none before. */
export interface LeanPaths {
  readonly before: LeanNode | null;
  readonly node: LeanNode;
  readonly odds: Float64Array;
}

/** Pairs with less than this share of the best one's odds are not followed. */
const worthFollowing = 1e-5;

export const startPaths = (node: LeanNode): LeanPaths => ({ before: null, node, odds: scaled(node.weights.slice()) });

/** The odds after one more picture: every pair goes on evenly into every lean of the next. */
export function followPaths(paths: LeanPaths, next: LeanNode): LeanPaths {
  const odds = new Float64Array(leanCount * leanCount);
  eachPair(paths, next, (row, column, likelihoods) => {
    const own = paths.odds[row * leanCount + column] ?? 0;
    const first = column * leanCount;
    for (let k = 0; k < leanCount; k++) odds[first + k] = (odds[first + k] ?? 0) + own * (likelihoods[k] ?? 0);
  });
  for (let index = 0; index < odds.length; index++) {
    odds[index] = (odds[index] ?? 0) * (next.weights[index % leanCount] ?? 0);
  }
  return { before: paths.node, node: next, odds: scaled(odds) };
}

/** How likely what came after `paths` is for each of its pairs, from the same for the pairs of the next picture. */
export function followBack(paths: LeanPaths, { node }: LeanPaths, after: Float64Array): Float64Array {
  const later = after.map((value, index) => value * (node.weights[index % leanCount] ?? 0));
  const likely = new Float64Array(paths.odds.length);
  eachPair(paths, node, (row, column, likelihoods) => {
    const first = column * leanCount;
    let sum = 0;
    for (let k = 0; k < leanCount; k++) sum += (likelihoods[k] ?? 0) * (later[first + k] ?? 0);
    likely[row * leanCount + column] = sum;
  });
  return scaled(likely);
}

/** The odds of each lean of the newest picture, `after` taken into account where there is any. They sum to 1. */
export function oddsOfLeans({ odds }: LeanPaths, after: Float64Array | null): Float64Array {
  const sums = new Float64Array(leanCount);
  let total = 0;
  for (let index = 0; index < odds.length; index++) {
    const value = (odds[index] ?? 0) * (after?.[index] ?? 1);
    sums[index % leanCount] = (sums[index % leanCount] ?? 0) + value;
    total += value;
  }
  return total > 0 ? sums.map((value) => value / total) : sums.fill(1 / leanCount);
}

/** Calls back with row, column and how likely each lean of the next picture is after them, for every pair worth following. */
function eachPair(
  { before, node, odds }: LeanPaths,
  next: LeanNode,
  on: (row: number, column: number, likelihoods: Float64Array) => void,
): void {
  const seconds = Math.max(1e-3, (next.t - node.t) / 1000);
  const turn: EvenTurn = { x: 0, y: 0, z: 0, variance: 0 };
  const likelihoods = new Float64Array(leanCount);
  const rows = before === null ? 1 : leanCount;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < leanCount; column++) {
      if ((odds[row * leanCount + column] ?? 0) < worthFollowing) continue;
      if (before === null) stayAbout(turn, node, column, seconds);
      else {
        const past = Math.max(1e-3, (node.t - before.t) / 1000);
        goOn(turn, before.directions, row, node.directions, column, past, seconds, next.pace);
      }
      oddsAfter(likelihoods, turn, next.directions);
      on(row, column, likelihoods);
    }
  }
}

/** Nothing is known of the turn yet. */
function stayAbout(turn: EvenTurn, { directions }: LeanNode, cell: number, seconds: number): void {
  turn.x = directions[3 * cell] ?? 0;
  turn.y = directions[3 * cell + 1] ?? 0;
  turn.z = directions[3 * cell + 2] ?? 0;
  turn.variance = Math.min(1.5, (filterTuning.firstRateSd * seconds) ** 2 + leanStep ** 2 / 6);
}

/** Scaled so that the greatest is 1. */
function scaled(odds: Float64Array): Float64Array {
  let most = 0;
  for (const value of odds) most = Math.max(most, value);
  if (!(most > 0)) return odds.fill(1);
  for (let index = 0; index < odds.length; index++) odds[index] = (odds[index] ?? 0) / most;
  return odds;
}
