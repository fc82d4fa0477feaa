/** Slope of the straight line through some points (least squares), units of the value for one of `t`. Not a number for fewer than two moments. */
export function slopeOf(points: readonly { readonly t: number; readonly value: number }[]): number {
  const mean = (of: (point: { readonly t: number; readonly value: number }) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const [meanT, meanValue] = [mean(({ t }) => t), mean(({ value }) => value)];
  return mean(({ t, value }) => (t - meanT) * (value - meanValue)) / mean(({ t }) => (t - meanT) ** 2);
}
