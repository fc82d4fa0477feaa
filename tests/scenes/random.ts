/** A stream of numbers in [0, 1) that a seed decides wholly (mulberry32, public domain). */
export type Random = () => number;

export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A stream of its own for each named use, so that a change in one use leaves the others' numbers alone. */
export function namedRandom(seed: number, name: string): Random {
  let hash = 2166136261 ^ seed;
  for (let index = 0; index < name.length; index++) hash = Math.imul(hash ^ name.charCodeAt(index), 16777619);
  return seededRandom(hash ^ Math.imul(seed, 0x9e3779b1));
}

/** One draw from the standard normal distribution (Box and Muller). */
export function gaussian(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}

export const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
