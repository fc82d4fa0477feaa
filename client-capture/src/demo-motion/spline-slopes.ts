/**
 * Slopes at the knots of the cubic spline through `values` whose ends have the given slopes ("clamped"): the twice continuously
 * differentiable one. Tridiagonal solve (Thomas). `times` rise strictly; two or more knots.
 * de Boor, A Practical Guide to Splines, chapter IV.
 */
export function splineSlopes(
  times: readonly number[],
  values: readonly number[],
  first: number,
  last: number,
): readonly number[] {
  const count = times.length;
  const slopes = new Array<number>(count).fill(0);
  slopes[0] = first;
  slopes[count - 1] = last;
  const upper: number[] = [0];
  const right: number[] = [first];
  for (let k = 1; k < count - 1; k++) {
    const before = at(times, k) - at(times, k - 1);
    const after = at(times, k + 1) - at(times, k);
    const rise =
      3 *
      ((at(values, k) - at(values, k - 1)) * (after / before) + (at(values, k + 1) - at(values, k)) * (before / after));
    const pivot = 2 * (before + after) - after * at(upper, k - 1);
    upper[k] = before / pivot;
    right[k] = (rise - after * at(right, k - 1)) / pivot;
  }
  for (let k = count - 2; k >= 1; k--) slopes[k] = at(right, k) - at(upper, k) * at(slopes, k + 1);
  return slopes;
}

const at = (list: readonly number[], index: number): number => list[index] ?? 0;
