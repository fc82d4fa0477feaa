import type { Tally } from "./tally.ts";

/** What a tally comes to. Shares are 0-1; NaN-free: null where there is nothing to take a share of. */
export interface Figures {
  readonly frames: number;
  readonly tracked: number;
  /** Share of findable pictures that were tracked. */
  readonly trackedShare: number | null;
  /** Shares of the tracked within 1, 2, 3, 5 degrees. */
  readonly within1: number | null;
  readonly within2: number | null;
  readonly within3: number | null;
  readonly within5: number | null;
  readonly medianDegrees: number | null;
  /** Share of the tracked that state an error whose error lies inside their stated 95 % interval. */
  readonly coverage: number | null;
  /** Shares of the tracked within 6 degrees whose line across lies inside its stated 95 % interval, and whose end along the shaft does, or has a part of the head's neck in it. */
  readonly acrossCoverage: number | null;
  readonly headCoverage: number | null;
  /** Shares of all pictures. */
  readonly falseLock: number | null;
  readonly confidentWrong: number | null;
  readonly lost: number | null;
  readonly millisecondsEach: number | null;
}

export function figuresOf(tally: Tally): Figures {
  const sorted = tally.errors.toSorted((a, b) => a - b);
  const within = (degrees: number): number | null =>
    share(sorted.filter((error) => error <= degrees).length, sorted.length);
  return {
    frames: tally.frames,
    tracked: sorted.length,
    trackedShare: share(tally.findableTracked, tally.findable),
    within1: within(1),
    within2: within(2),
    within3: within(3),
    within5: within(5),
    medianDegrees: sorted[Math.floor((sorted.length - 1) / 2)] ?? null,
    coverage: share(tally.covered, tally.stated),
    acrossCoverage: share(tally.placedRight, tally.placed),
    headCoverage: share(tally.headsRight, tally.heads),
    falseLock: share(tally.falseLocks, tally.frames),
    confidentWrong: share(tally.confidentWrong, tally.frames),
    lost: share(tally.lost, tally.frames),
    millisecondsEach: share(tally.millisecondsSpent, tally.frames),
  };
}

const share = (part: number, whole: number): number | null => (whole === 0 ? null : part / whole);
