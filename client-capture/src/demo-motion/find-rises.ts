const sampleEvery = 0.004;

/**
 * Where `f` goes from below 0 to 0 or above between `from` (not counted) and `to`, in rising order, each to a nanosecond by bisection. Two crossings
 * within 4 ms of one another are not told apart from none.
 */
export function findRises(f: (t: number) => number, from: number, to: number): readonly number[] {
  const samples = Math.max(1, Math.ceil((to - from) / sampleEvery));
  const rises: number[] = [];
  let before = f(from);
  let earlier = from;
  for (let k = 1; k <= samples; k++) {
    const t = from + ((to - from) * k) / samples;
    const value = f(t);
    if (before < 0 && value >= 0) rises.push(bisect(f, earlier, t));
    before = value;
    earlier = t;
  }
  return rises;
}

function bisect(f: (t: number) => number, below: number, above: number): number {
  let low = below;
  let high = above;
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (f(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}
