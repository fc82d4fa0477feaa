/** Milliseconds: the longest rest, what a missed picture adds to it, and what a time without any takes off. Up: more pictures looked at. */
export interface RestTuning {
  readonly longest: number;
  readonly longer: number;
  readonly shorter: number;
}

/** How long work that can wait rests from one turn to the next, so that pictures of a live source are not missed for it. */
export interface AdaptedRest {
  /** A turn is over at that time (milliseconds, rising); `missed`: how many of the source's pictures were missed so far. */
  worked(at: number, missed: number): void;
  isOver(at: number): boolean;
}

export function adaptRest({ longest, longer, shorter }: RestTuning): AdaptedRest {
  let rest = 0;
  let until = Number.NEGATIVE_INFINITY;
  let missedBefore = 0;
  return {
    worked(at, missed) {
      rest = missed > missedBefore ? Math.min(longest, rest + longer) : Math.max(0, rest - shorter);
      missedBefore = missed;
      until = at + rest;
    },
    isOver: (at) => at >= until,
  };
}
