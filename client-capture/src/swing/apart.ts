/** How far two places are apart, in the unit of their axes. */
export const apart = (a: readonly number[], b: readonly number[]): number =>
  Math.hypot(...a.map((value, axis) => value - (b[axis] ?? 0)));
