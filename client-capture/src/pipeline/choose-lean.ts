import type { Direction, ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { dot, normalise, scale, subtract, add, type Vector } from "@overcue/shared-geometry/vector";
import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import { angleBetween } from "@overcue/shared-geometry/angle";

/**
 * A picture leaves two leans of a shaft open, towards the lens and away from it. The club moves smoothly, so both are followed and the
 * smoother story wins.
 */
export interface LeanState {
  readonly stories: readonly Story[];
  readonly t: number;
}

interface Story {
  readonly toHead: Direction;
  /** Change of the direction a millisecond. */
  readonly rate: Vector;
  readonly cost: number;
}

export const startLean: LeanState = { stories: [], t: 0 };

/** After a gap this long, milliseconds, the stories start anew. */
const longestGap = 400;
/** What a club may change its turning by between pictures, radians a millisecond squared: full swings brake and speed up at about this. */
const restlessness = 1.2e-4;
/** Least spread of a direction, radians. */
const leastSpread = 0.03;
/** Old evidence fades, so that one bad stretch is not carried for ever: share kept a picture. */
const memory = 0.9;
/** What a club head under the grass costs, and one that starts out away from the lens: it goes back towards the camera first. */
const underGround = 6;
const awayAtFirst = 0.4;
/** A lead smaller than this decides nothing: the answer then covers both leans. */
const clearLead = 1;

export function chooseLean(
  state: LeanState,
  candidates: readonly ShaftInWorld[],
  reach: number,
): { readonly state: LeanState; readonly output: ShaftInWorld | null } {
  const first = candidates[0];
  if (first === undefined) return { state, output: null };
  // One candidate: the head was not seen, and its lean says nothing about the stories.
  if (candidates.length === 1) return { state, output: first };
  const passed = first.t - state.t;
  const fresh = state.stories.length === 0 || passed <= 0 || passed > longestGap;
  const told = candidates.map((shaft, index) => {
    const burden = shaft.grip.z + reach * shaft.toHead.z < -0.1 ? underGround : 0;
    if (fresh) return { shaft, story: { toHead: shaft.toHead, rate: still, cost: burden + index * awayAtFirst } };
    const story = continueBest(state.stories, shaft, passed);
    return { shaft, story: { ...story, cost: memory * story.cost + burden } };
  });
  const [best, other] = told.toSorted((a, b) => a.story.cost - b.story.cost);
  if (best === undefined) return { state, output: null };
  const least = best.story.cost;
  const stories = told.map(({ story }) => ({ ...story, cost: story.cost - least }));
  const open = other !== undefined && other.story.cost - least < clearLead;
  return { state: { stories, t: first.t }, output: open ? coveringBoth(best.shaft, other.shaft) : best.shaft };
}

const still: Vector = { x: 0, y: 0, z: 0 };

function continueBest(stories: readonly Story[], shaft: ShaftInWorld, passed: number): Story {
  const spread = Math.max(leastSpread, directionSpread(shaft)) + restlessness * passed * passed;
  let best: Story | null = null;
  for (const story of stories) {
    const expected = normalise(add(story.toHead, scale(story.rate, passed))) ?? story.toHead;
    const miss = Math.acos(Math.max(-1, Math.min(1, dot(expected, shaft.toHead))));
    const cost = story.cost + Math.min(25, 0.5 * (miss / spread) ** 2);
    if (best !== null && best.cost <= cost) continue;
    const seen = scale(subtract(shaft.toHead, story.toHead), 1 / passed);
    const rate = add(scale(story.rate, 0.5), scale(seen, 0.5));
    best = { toHead: shaft.toHead, rate, cost };
  }
  return best ?? { toHead: shaft.toHead, rate: still, cost: 0 };
}

function directionSpread({ covariance, toHead }: ShaftInWorld): number {
  const level = 1 - toHead.z * toHead.z;
  return Math.sqrt((covariance[18] ?? 0) * level + (covariance[24] ?? 0));
}

/** The likelier lean with a covariance that reaches the other one too. */
function coveringBoth(best: ShaftInWorld, other: ShaftInWorld): ShaftInWorld {
  const a = anglesOf(best.toHead);
  const b = anglesOf(other.toHead);
  const apart = [0, 0, 0, angleBetween(a.azimuth, b.azimuth) / 2, (b.elevation - a.elevation) / 2];
  const covariance = best.covariance.map(
    (value, at) => value + (apart[Math.floor(at / 5)] ?? 0) * (apart[at % 5] ?? 0),
  );
  return { ...best, covariance };
}
