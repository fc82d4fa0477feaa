/** A number and how much it counts; weights are positive and only their ratios matter. */
export interface Weighted {
  readonly value: number;
  readonly weight: number;
}

/**
 * The value with half of the weight on either side; where the half falls between two values, their mean. Equal weights give the ordinary median.
 * Null for an empty list.
 */
export function weightedMedian(items: readonly Weighted[]): number | null {
  const ordered = items.toSorted((a, b) => a.value - b.value);
  const half = ordered.reduce((sum, { weight }) => sum + weight, 0) / 2;
  let passed = 0;
  for (const [index, { value, weight }] of ordered.entries()) {
    passed += weight;
    const next = ordered[index + 1];
    if (next && Math.abs(passed - half) <= 1e-9 * half) return (value + next.value) / 2;
    if (passed > half) return value;
  }
  return ordered.at(-1)?.value ?? null;
}
