/** An instant in milliseconds with one standard deviation. */
interface Instant {
  readonly t: number;
  readonly sd: number;
}

export interface Tempo {
  readonly backswingSeconds: number;
  readonly downswingSeconds: number;
  readonly ratio: number;
  /** One standard deviation of the ratio, from those of the instants. */
  readonly ratioSd: number;
}

/**
 * From setting off to the (first) top, and from the (last) top to impact; a pump's two tops err together. Null where one of them was not seen, or the instants
 * do not follow one another.
 */
export function tempoBetween(
  setOff: Instant,
  firstTop: Instant | null,
  lastTop: Instant | null,
  impact: Instant | null,
): Tempo | null {
  if (firstTop === null || lastTop === null || impact === null) return null;
  const back = (firstTop.t - setOff.t) / 1000;
  const down = (impact.t - lastTop.t) / 1000;
  if (!(back > 0 && down > 0)) return null;
  const topSd = Math.max(firstTop.sd, lastTop.sd);
  const ratioSd =
    Math.hypot(setOff.sd / down, topSd * (1 / down + back / down ** 2), (impact.sd * back) / down ** 2) / 1000;
  return { backswingSeconds: back, downswingSeconds: down, ratio: back / down, ratioSd };
}
