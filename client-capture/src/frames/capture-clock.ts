/** Turns a picture's own stamp and its time of arrival (both milliseconds) into its capture time on the page's clock. */
export type CaptureClock = (stamp: number, arrived: number) => number;

/** Least step between two capture times, milliseconds: they rise strictly. */
const leastStep = 0.001;

/**
 * A camera stamps its pictures evenly on a clock with an unknown beginning; the arrival on the page's clock is late by a varying delay.
 * The smallest delay seen is taken as none, so that the stamps' even steps are kept and no capture time lies in the future.
 * What stays unknown is the delay that every picture has.
 */
export function startCaptureClock(): CaptureClock {
  let offset = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  return (stamp, arrived) => {
    offset = Math.min(offset, arrived - stamp);
    last = Math.max(stamp + offset, last + leastStep);
    return last;
  };
}
