/** Every tuning number of the reps that are told from the picture alone: metres of the golfer's own scale, milliseconds, and shares. */
export const pictureTuning = {
  /** Least rise and fall of the hands that is a swing and not a waggle. */
  swing: 0.3,
  /** Share of the rise to the top that the hands must come down again to have passed the ball. */
  comesDown: 0.7,
  /** Within this of their resting place the hands have not left address. */
  rests: 0.02,
  /** The hands rest where in this many milliseconds their middle moves less than `rests`, and most of them lie within it. */
  restTime: 300,
  /** Before a fast swing they rest less long: this share of the time from the first tenth of the rise to the top, and no less than `leastRest` milliseconds. */
  restShare: 0.5,
  leastRest: 90,
  mostAtRest: 0.8,
  /** Of a club's two ends at rest, one picture after the other, at least this share lies so near. */
  mostNear: 0.6,
  /** What the hands' distance from the camera, which the pose model tells less well, counts of what is seen across the line of sight. */
  depthCounts: 0.4,
  /** So much of a rest is looked at, milliseconds; its last `creeps` may be the first creeping away. */
  longRest: 1500,
  creeps: 600,
  /** The head moves less than this meanwhile. */
  headRests: 0.05,
  /** What it moves along the club counts the less, the more its place along it scatters beyond this at rest. */
  endScatters: 0.03,
  /** A head that comes down by more than this after its rest was not at the ball. */
  offBall: 0.25,
  /** A swing comes down in less than this many times the time that its hands were seen going up, moments slower than `holds` (metres a second) left out. */
  quicker: 2,
  holds: 0.12,
  /**
   * The setting off: what is `seen` to have moved, metres of the head or of the hands (more where it scatters at rest: `scatters` times that), and up to where
   * the start is fitted; the times over which it is steadied and for which it may be unseen, and one standard deviation where nothing can be fitted, milliseconds. As shares of
   * the time from then to the top, one standard deviation each: how long a start looks like rest (at first the head goes along the line of sight), and how
   * much earlier or later the head is seen to have moved than the fit has it, and than whoever looks on would say.
   * Where the usual course of a reach tells it: a club that sets off along the line of sight is seen to go so many times less far than it does; one standard deviation as a share of the time from
   * then to when it is seen to have left.
   * Where nobody knows the camera, what lies within `shifts` metres of its rest may be another rest, if it keeps its place there within `pauses` times `seen`; and one that takes this share of the
   * time that is left to the top to go twice as far as is seen `lingers` and has not left yet.
   */
  setOff: {
    head: { seen: 0.03, most: 0.3 },
    hands: { seen: 0.02, most: 0.1 },
    scatters: 3,
    shifts: 0.15,
    pauses: 0.5,
    lingers: 0.4,
    steadiedOver: 120,
    longestGap: 120,
    creepShare: 0.2,
    seenShare: 0.1,
    visibleShare: 0.14,
    unfittedSd: 200,
    alongSight: 2,
    usualShare: 0.8,
  },
  /** Out of a flow the hands turned round forward of the ball no longer before their low than this, milliseconds. */
  flowTime: 1500,
  /** Speeds are taken over this many milliseconds. */
  speedOver: 150,
  /** Past the ball the hands rise by this, in less than so many times the time that they came down in and so many milliseconds more. */
  risesThrough: 0.1,
  through: { times: 1.5, more: 400 },
  /**
   * At a full top the hands are this far over the lead shoulder in the picture, or the club's head is no farther than that over the hands; half a swing's are not. Where the
   * club is not seen there, hands lower than `surelyHalf` are half a swing's.
   */
  fullOverShoulder: 0.3,
  standsUp: 0.5,
  surelyHalf: 0.15,
  /** The hands are highest within `topFlat` of the top, lowest within `lowFlat` of their low; the top is known to a share of the time that they spend within `topDepth` of it. */
  topFlat: 0.015,
  lowFlat: 0.005,
  topDepth: 0.08,
  topShare: 0.2,
  /**
   * Seen from behind at hand height, the hands at arm level look so much higher than the lead shoulder, which is farther away (0.4 m over the lens, 0.6 m
   * deeper, at 3 m); one standard deviation of that, with the pose model's own errors. Metres.
   */
  armLevel: { looksHigher: 0.08, sd: 0.12 },
  /** One standard deviation of the rise at which the shaft is level, as the lens stands over or under it. Metres. */
  shaftLevelSd: 0.1,
  /** The shaft is level coming down before this share of the way down's time after the hands were lowest. */
  levelBefore: 0.25,
  /**
   * Impact. The head is looked for from one to another share of the way down's time after the top, while the shaft points down by at least that sine.
   * Where it is not seen: impact comes that share of the way down's time after the hands were lowest (-0.03 to 0.15 in simulated sessions, by where the lens stands, and
   * 0.06 of one real swing), known to another share and no better than `least` milliseconds.
   */
  impact: { from: 0.5, to: 1.6, pointsDown: 0.3, afterLow: 0.06, share: 0.14, least: 25 },
} as const;
