/**
 * The fractional frame number of an instant among the frames' rising times, and how long a frame lasts there. Before the first and after the
 * last frame the neighbouring step goes on. Fewer than two frames: frame 0, 1 ms a frame.
 */
export function frameAt(
  times: readonly number[],
  t: number,
): { readonly frame: number; readonly millisecondsPerFrame: number } {
  let at = 0;
  while (at < times.length - 2 && (times[at + 1] ?? Number.POSITIVE_INFINITY) <= t) at++;
  const from = times[at];
  const to = times[at + 1];
  if (from === undefined || to === undefined) return { frame: 0, millisecondsPerFrame: 1 };
  return { frame: at + (t - from) / (to - from), millisecondsPerFrame: to - from };
}
