/** A difference over this is a sleep of the machine, not a drift: milliseconds. */
const sleepMs = 60_000;

/**
 * The relay's clock: milliseconds since the epoch that never step back. It runs on the monotonic clock, so that a
 * corrected wall clock moves nothing, and goes forward to the wall clock after the machine slept, which stops the
 * monotonic clock on some systems: a book kept open overnight must know that it is the next day.
 */
export function makeRelayClock(monotonic: () => number, wall: () => number): () => number {
  let offset = 0;
  return () => {
    const behind = wall() - (monotonic() + offset);
    if (behind > sleepMs) offset += behind;
    return monotonic() + offset;
  };
}
