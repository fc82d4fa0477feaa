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
    /** The largest move of the cue after one block, as a share of the wanted change. Larger: quicker and rougher. */
    step: 0.5,
    /** A line or band nearer than this share of the wanted change (or one tolerance) draws the cue onto itself. */
    roundWithin: 0.1,
    /** The carry-over that the adaptive cue aims at. Higher: arrives sooner and overshoots more. */
    aimAt: 1,
    /** The cue moves only where the expected carry-over is farther than this from the aim. Higher: calmer. */
    restWithin: 0.15,
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
