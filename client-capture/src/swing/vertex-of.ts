import type { SeriesPoint } from "./fit-crossing.ts";

/** When the parabola through three points of a series is lowest, milliseconds; the middle one's instant where they lie on a line. */
export function vertexOf(
  a: Pick<SeriesPoint, "t" | "value">,
  b: Pick<SeriesPoint, "t" | "value">,
  c: Pick<SeriesPoint, "t" | "value">,
): number {
  const [left, right] = [b.t - a.t, c.t - b.t];
  const [down, up] = [(b.value - a.value) / left, (c.value - b.value) / right];
  const bend = (up - down) / (left + right);
  if (!(bend > 0)) return b.t;
  const shift = -(down + bend * left) / (2 * bend);
  return b.t + Math.min(right, Math.max(-left, shift));
}
