/** Places a source's own times on the page's clock (milliseconds) and says how long to wait until a picture is due. */
export interface SourceClock {
  toPageTime(t: number): number;
  /** To be called as a picture comes; 0 where it is due or late. A late one moves all later times with it. */
  waitFor(t: number, now: number): number;
}

/** A live camera stamps with the page's clock and is never waited for. */
export const liveClock: SourceClock = { toPageTime: (t) => t, waitFor: () => 0 };

/** A clip or the demo golfer plays no faster than it was filmed, and slower where the device cannot keep up. */
export function playingClock(): SourceClock {
  let shift: number | null = null;
  return {
    toPageTime: (t) => t + (shift ?? 0),
    waitFor(t, now) {
      shift = shift === null ? now - t : Math.max(shift, now - t);
      return Math.max(0, t + shift - now);
    },
  };
}
