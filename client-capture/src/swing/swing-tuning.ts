const degree = Math.PI / 180;

/** Every tuning number of the swing clock: unit, and which way to turn it. */
export const swingTuning = {
  /** A swing angle known no better than this, one sd in radians, does not count: it may as well hang as stand. Larger: fewer gaps, more slips. */
  mostAngleSd: 40 * degree,
  /** Known no worse than this, radians, the lean tells the side that the club is on. */
  sureAngleSd: 8 * degree,
  /**
   * Hands this far before or behind their place at the ball are aside, plainly aside (metres). The club changes sides below the first angle (radians), a first
   * choice is still put right below the second; pictures this far apart (seconds) may have missed the low.
   */
  side: {
    handsAside: 0.08,
    handsPlainlyAside: 0.14,
    changesBelow: 80 * degree,
    settlesBelow: 110 * degree,
    missedLow: 0.04,
  },
  /** A club that turns faster than this, radians a second (steadied over so many seconds), swings through the low and does not bounce off it. */
  boundRate: 150 * degree,
  rateMemory: 0.04,
  /** Faster than this, radians a second, each picture counts for itself. */
  aloneRate: 300 * degree,
  /** Within this height of the lead shoulder (metres) the hands do not tell whether the club has passed the vertical. */
  shoulderUnsure: 0.1,
  /** About shoulder height the club turns this much for each metre that the hands rise, radians; the rise is steadied over so many seconds. */
  turnPerRise: 200 * degree,
  riseMemory: 0.1,
  /** Turned less than this from hanging, radians, the club has not passed the vertical. */
  leastPastVertical: 70 * degree,
  /** Radians of swing angle under which the club hangs low, as at the ball. Larger: waggles hide more of the true start. */
  lowClub: 50 * degree,
  /** Coming down, a club turned less than this from hanging has passed level, and swings through: radians. */
  passesLow: 75 * degree,
  /** Radians past which a movement may be a backswing. Larger: slower to notice, fewer waggles followed. */
  leavesLow: 70 * degree,
  /** Least peak of a rep, radians: a shorter movement is a waggle or a brush. */
  leastPeak: 95 * degree,
  /** Peak from which whoever swings expects a rep and is told where it was none, radians. Larger: quieter about club that is carried about, and about half swings. */
  swungUp: 140 * degree,
  /** Least turn of the club from where it rested at the ball to the peak, radians: a club that stood leant and is picked up turns less. */
  leastTurn: 75 * degree,
  /** Least peak of a full swing, radians: below it the rep is a half. */
  fullPeak: 225 * degree,
  /** Radians by which the swing angle must come back from its extreme to count as a reversal. Larger: deaf to noise, and to small pumps. */
  reversal: 22 * degree,
  /** And by so many standard deviations of the angle, where that is more. */
  reversalSds: 2,
  /** And the club takes this long from a top to the turn of a pump, and from there to the next top, milliseconds: what comes back sooner was misjudged for a picture or two. */
  leastBetweenTurns: 200,
  /** What the hands must have come down by for a top, and go up again by for a pump, metres: the angle alone is noisy where the club stands upright. */
  handsFall: 0.06,
  handsRise: 0.1,
  /** Least travel of the hands from where they were at address to the peak, metres. Larger: rejects re-grips and very short half swings. */
  leastHandTravel: 0.22,
  /** Least that the lead hand is under its shoulder when the club comes through the low, metres: at the finish, hands high, the club hangs over the shoulder. Larger: takes fewer finishes for reps, more reps for finishes. */
  leastUnderShoulder: 0.15,
  /** Most that the hands may be lower at the top than where they rested, metres: a backswing lifts them, unless it sets off out of a flow. Larger: takes teeing up for a half swing. */
  mostSinking: 0.12,
  /** Both are looked at within so many milliseconds, as a median. */
  aboutTurn: 100,
  /** Most that the feet may shift within a rep, metres. */
  mostFootShift: 0.3,
  /** Longest gap without a shaft inside a rep, milliseconds. */
  longestGap: 4000,
  /** Unseen for longer than this, milliseconds, hands at arm level, or a club that is level, may have been up and come down again. Smaller: fewer checkpoints, fewer taken for each other. */
  longestUnfollowed: 500,
  /** Longest a rep may take, milliseconds: holds left out, as far as the club is seen to stand still in them, and with them. Larger: a club carried about and laid down again may be taken for a rep. */
  longestRep: 15_000,
  longestHeldRep: 45_000,
  /** A rep in which the club stood still for longer than this has no tempo, milliseconds; a slow one stands still for a moment at its top. */
  mostStoodForTempo: 1000,
  /** Longest time from leaving the low to the top and back, holds left out: the low before must be this recent, milliseconds. */
  longestBack: 8000,
  /** Swing speed below which the club stands still, radians a second. */
  stillRate: 10 * degree,
  /** Hands' speed below which they stand still, metres a second. */
  stillHands: 0.06,
  /**
   * Swing angles between which the setting off is fitted, radians: `least` above the resting scatter; `most` where the path stops growing by that power.
   * `otherPowers`: what else a start may grow by. Milliseconds where nothing can be fitted: `unfittedSd`; where the club only turned round: `turnSd`.
   * `creepShare`: how long a slow start looks like rest, one standard deviation as a share of the time from then to the top.
   * `sureLean`: a hanging club whose swing angle is known as well as this, radians, tells its setting off better by it than the picture does.
   */
  setOff: {
    least: 1.5 * degree,
    most: 12 * degree,
    power: 2.75,
    otherPowers: [2, 3.5],
    unfittedSd: 200,
    turnSd: 60,
    creepShare: 0.15,
    sureLean: 3 * degree,
  },
  /**
   * What a rep sets off from: it ended no longer `before` the club was last low than this, milliseconds (a club may be held low on its way back), or no longer than `heldBefore` where the club went from there to be held; a head so far over the ball
   * in the picture, metres at the ball's distance, is `offGround`; hands `furtherBack`, metres, within `creepTime`, milliseconds, after a rest are creeping away from it, and `plainlyBack`, or with the head off the ground, held; a club held on its way back went there from the ball in `toHold`, milliseconds.
   */
  rest: {
    before: 6000,
    heldBefore: 30_000,
    offGround: 0.12,
    furtherBack: 0.03,
    plainlyBack: 0.12,
    creepTime: 700,
    toHold: 4000,
  },
  /** The top lies while the hands are no more than this below their highest, metres. Larger: finds it behind a misjudged height, minds holds on the way down. */
  topHandsFall: 0.12,
  /** Where no crest is found the top may be anywhere in this long at least, milliseconds. */
  leastSearch: 120,
  /**
   * The club's turn about the top, where it is within `drop` radians of its highest (larger: calmer under noise, more of the swing's shape in it): radians that it falls in the time of the way down by the square of that time, as a
   * natural logarithm, and how much steeper it falls later than earlier; what is `usual`, and one standard deviation of it (`at`: of the crest, in times of the way down). No sample counts as better than
   * `leastSd` radians; beyond `robustBeyond` standard deviations it loses weight. At most so many `rounds` of moving the stretch to its crest.
   */
  crest: {
    drop: 40 * degree,
    usual: { bend: 2.3, skew: 0.6 },
    usualSd: { at: 3, bend: 2, skew: 2 },
    leastSd: 0.02,
    robustBeyond: 2,
    rounds: 12,
  },
  /**
   * The same in the picture, where the club is seen: most that it may turn, radians, and the grip move across it, metres at the ball's distance, from one half of that time to the other, as means, and so many times as far from picture to picture. Larger: calmer under noise,
   * and a club that sets off slowly seems to rest still.
   */
  stillInPicture: { turn: 0.35 * degree, across: 0.006, stray: 4 },
  /** How long both must stand still to be a rest or a hold, milliseconds. */
  stillTime: 350,
  /** The follow-through is over when the swing angle has turned back by this much, radians. */
  throughReversal: 15 * degree,
  /** So much of what comes after a rep's end is looked at with it, milliseconds: enough to see the club come up again. */
  afterEnd: 250,
  /** From passing level to the ball takes at most this share of the time from the top to passing level. Larger: sees slow clubs through, ends reps later. */
  toBallShare: 0.5,
  /** Longest follow-through that is waited for, milliseconds. */
  longestThrough: 1500,
  /**
   * Told while it happens: up to an angular speed of the shaft of `rate`, radians a second at 60 pictures a second (scales with the rate); speed and pace are taken `paceOver` so many milliseconds
   * (larger: calmer, and later to see the club quicken); not where the instant is known no better than `mostSd`, one sd in milliseconds. Hands and shoulder come as late as the pose is old, and are
   * steadied: one sd of that is `poseAge`, milliseconds (larger: fewer bands told as it happens, fewer of them wrong).
   */
  live: { rate: 250 * degree, paceOver: 200, mostSd: 250, poseAge: 50 },
  /** Seconds of downswing from which a rep is a slow rehearsal. */
  rehearsalDown: 0.6,
  /** Radians of swing angle forward of the ball from which a rep counts as started by flowing back. */
  flowForward: 36 * degree,
  /** Half-width of the window of a local fit, milliseconds at least, and radians or metres of change at most. */
  fitWindow: { least: 34, angle: 28 * degree, height: 0.12, head: 0.4 },
  /**
   * A hold belongs to a checkpoint when the club is this near, radians, or the hands this near in height, metres. It is over so many times as far from there, or where the club was not seen to stand still
   * for so long, milliseconds (larger: calmer, and later to see the club move on). A checkpoint whose instant is told no better than `sureSd`, milliseconds, and lies no more than so many standard
   * deviations, or `leavesAfter`, from a hold at it, is dated by that.
   */
  holdNear: { angle: 14 * degree, height: 0.07, leavesBeyond: 2, leavesAfter: 1000, sureSd: 50, mostSds: 4 },
  /** Hands and shoulder errors that do not average out over a rep, metres: they set the error of arm level, takeaway and impact;
   * and the share of the time from top to low by which the fitted top is off because the way up and the way down differ, and impact because head and ball are placed apart along the line of sight. */
  lasting: { shoulder: 0.03, thigh: 0.06, hands: 0.02, head: 0.05, top: 0.02, impact: 0.04 },
  /**
   * The head in the picture about impact, metres at the ball's distance: one standard deviation from picture to picture; of how much longer or shorter the shaft is seen while it
   * moves than while it rests; the change up to which its passing is fitted; and the milliseconds to either side that its pace is taken over.
   */
  seenHead: { sd: 0.03, lasting: 0.08, change: 0.15, paceOver: 80 },
  /**
   * Impact by the head's lowest place in the picture, in pictures no more than `longestGap` milliseconds before and after it: it comes a share of the way down's time before the ball (simulated sessions
   * 100 to 123); one standard deviation is a share of that time, one of the time between the pictures, and no less than `least` milliseconds.
   */
  lowestHead: { longestGap: 120, beforeBall: 0.015, share: 0.025, betweenPictures: 0.07, least: 4 },
  /** Half-width over which the lead shoulder is steadied, as a share of the way back or down. Larger: less of the pose model's error, more of the shoulder's own bend. */
  shoulderWindow: 0.35,
  /** Errors of the lifted elevation that do not average out, radians. */
  lastingElevation: 0.25 * degree,
  /**
   * Impact by the club's lowest hanging: the least rise on either side, radians, for it to have been swung through; how far above its lowest the club may still be at the ball, radians; by what share of the way from level to
   * lowest the hands' lead lets it hang lowest after the ball, and one standard deviation of that (a few degrees of the shaft and a rising grip: common practice, no source). Told to better than `fast` (milliseconds)
   * it stands against the head's own place.
   */
  low: { leastRise: 25 * degree, offBall: 2 * degree, handsLead: { share: 0.1, sd: 0.05 }, fast: 25 },
  /** How many neighbouring samples share one error: fitted errors grow by its root. */
  sharedErrors: 2.5,
} as const;
