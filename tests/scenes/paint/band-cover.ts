/**
 * The share of a pixel's square that lies on the low side of a straight edge at signed distance `edge` from the pixel's
 * middle, measured along the edge's unit normal (nx, ny): exact for a straight edge, 0 to 1.
 * A unit square seen along a direction is a trapezoid of feet |nx| + |ny|; this is its running integral.
 */
export function coverBelow(edge: number, nx: number, ny: number): number {
  const a = Math.abs(nx);
  const b = Math.abs(ny);
  const wide = a > b ? a : b;
  const thin = a > b ? b : a;
  const foot = (wide + thin) / 2;
  if (edge <= -foot) return 0;
  if (edge >= foot) return 1;
  const flat = (wide - thin) / 2;
  if (edge < -flat) return (edge + foot) ** 2 / (2 * wide * thin);
  if (edge > flat) return 1 - (foot - edge) ** 2 / (2 * wide * thin);
  return 0.5 + edge / wide;
}
