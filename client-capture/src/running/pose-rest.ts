/** Milliseconds: the longest rest, what a missed picture adds to it, and what a time without any takes off. Up: more pictures looked at, fewer poses. */
const longest = 60;
const longer = 15;
const shorter = 2;

/** How long the pose model rests from one picture to the next, so that pictures of a live source are not missed for it. */
export interface PoseRest {
  /** It has answered at that time (milliseconds, rising); `missed`: how many of the source's pictures were missed so far. */
  answered(at: number, missed: number): void;
  isOver(at: number): boolean;
}

export function makePoseRest(): PoseRest {
  let rest = 0;
  let until = Number.NEGATIVE_INFINITY;
  let missedBefore = 0;
  return {
    answered(at, missed) {
      rest = missed > missedBefore ? Math.min(longest, rest + longer) : Math.max(0, rest - shorter);
      missedBefore = missed;
      until = at + rest;
    },
    isOver: (at) => at >= until,
  };
}
