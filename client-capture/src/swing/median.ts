/** Middle value; the mean of the two middle ones for an even count; 0 for none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[sorted.length >> 1];
  if (upper === undefined) return 0;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[(sorted.length >> 1) - 1] ?? upper)) / 2;
}
