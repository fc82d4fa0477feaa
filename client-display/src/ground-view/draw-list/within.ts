/** The value, or the nearer of the two ends where it lies outside; `low` where there is no room between them. */
export const within = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), Math.max(low, high));
