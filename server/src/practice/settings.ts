/**
 * Every number that tunes the practice rules, with its unit and which way to turn it. None of them is a length: lengths come from the
 * station, the baseline and the drill, so the rules hold for any size of golfer (rule P8).
 */
export const practiceSettings = {
  baseline: {
    /** Reps without feedback that make a baseline. More: steadier start, slower to begin. */
    reps: 7,
    /** Fewer than this at a checkpoint, and the checkpoint has no baseline. */
    fewest: 3,
  },
  pattern: {
    /** Reps that must show both lead arm level places. Fewer: `not-enough-data`. */
    fewest: 5,
    /** Difference between back and down that counts as a difference, in line tolerances. Higher: more golfers are `even`. */
    evenWithinTolerances: 2,
  },
  cue: {
    /** Felt change as a multiple of the wanted change at the start (Patton et al. 2013: doubling the error). */
    startGain: 2,
    /** The same, farthest without a person's yes (Patton et al. 2013: 3.1 was not among the faster). */
    capGain: 2.5,
    /** The largest move of the cue after one block, in wanted changes. Larger: quicker and rougher. */
    step: 1,
    /** A line or band nearer than this share of the wanted change (or one tolerance) draws the cue onto itself. */
    roundWithin: 0.1,
    /** The carry-over that the adaptive cue aims at. Higher: arrives sooner and overshoots more. */
    aimAt: 0.95,
    /** Carry-over that counts as too much, and how many standard errors of a block the aim keeps away from it. More: calmer with scattered golfers. */
    overshoot: 1.5,
    overshootSds: 2.5,
    /** The cue moves only where the expected carry-over is farther than this from the aim. Higher: calmer. */
    restWithin: 0.15,
    /** Below this share of the cue arriving, more cue is not asked for as if it helped without end. Lower: bolder with golfers whom the cue hardly moves. */
    leastArrives: 0.05,
    /**
     * How far from the ball line a felt place may lie at all, in heel line distances: past that the butt line would be flatter than 20 degrees and could not be
     * read if it got there. Long before that a person's yes is asked for at each step.
     */
    reach: 3.5,
    /** Before the first block: share of the cue expected to arrive, and its standard deviation (a default, no source). */
    priorArrives: 0.3,
    priorArrivesSd: 0.2,
    /** How much that share may change from one block to the next, one standard deviation. Higher: trusts the last block more. */
    driftSd: 0.15,
  },
  block: {
    reps: 5,
  },
  retention: {
    reps: 5,
    /** Hours after the last practice from which the next-day test is offered, and after which it is no longer a next-day one. */
    nextDayFromHours: 12,
    nextDayToHours: 60,
    /** Hours after which the test of 1-2 weeks is offered. */
    weeksFromHours: 6.5 * 24,
  },
  session: {
    /** A pause longer than this starts a new session. */
    newAfterHours: 3,
  },
  speak: {
    /** Silent while a place is within this share of the wanted change (Cruz et al. 2018: 15 %). */
    silentWithin: 0.15,
    /** Odds from which a place counts as inside or outside of the wanted stretch; between them nothing is claimed. */
    claimOdds: 0.8,
  },
} as const;
