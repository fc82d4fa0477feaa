/** Every number that sets how the filter over a rep behaves. */
export const filterTuning = {
  /** Angular acceleration that is not foreseen, rad/s2: at rest, and for each rad/s of turn. Higher follows faster and smooths less. */
  turnUnrest: 1.5,
  turnUnrestPerRate: 5,
  /** Acceleration of the hands that is not foreseen, m/s2: at rest, and for each m/s. Higher follows faster and smooths less. */
  handUnrest: 0.7,
  handUnrestPerSpeed: 5,
  /** How long such an acceleration lasts, seconds. */
  unrestLasts: 0.1,
  /** One sd of speed (m/s) and turn (rad/s) at the first picture. */
  firstSpeedSd: 1,
  firstRateSd: 4,
  /** One sd of the grip's place before the first picture, metres. */
  firstPlaceSd: 1,
  /** Share of the depth prior's variance that stays the same through a rep, and for how long it does, seconds. */
  depthBiasShare: 0.8,
  depthBiasLasts: 2,
  /** One sd of the grip-to-head length through a rep, metres: the club's length and where the hands hold it. */
  lengthBiasSd: 0.012,
  /** How long a tracker's error lasts, seconds: pictures closer together than twice this are not independent. */
  errorsLast: 0.015,
  /** Beyond this many sds a measurement loses weight. */
  robustBeyond: 3,
  /** Hands under and over these heights (metres) are low and high, over a span of so many metres. */
  lowHands: 1.15,
  highHands: 1.35,
  handHeightSpread: 0.2,
  /** Hands this far (metres) to one side of the ball are plainly on that side. */
  sideSpread: 0.15,
  /** Nats a second against a shaft that points wholly the unusual way. Higher settles the lean sooner by habit. */
  againstHabit: 120,
  /** Nats a second by which habit must prefer the other lean for it to be put up although motion speaks against it. */
  plainHabit: 30,
  /** A head deeper than this (metres) is under the ground, and nats a second for each metre more. */
  headUnderGround: 0.05,
  againstUnderGround: 400,
  /** A lean mirrored about square is put up as a second answer where it is at most this many sds from the first. */
  twinWithin: 3,
  /** Log odds under which the second answer is dropped: the lean is settled. */
  settledAt: -8,
} as const;
