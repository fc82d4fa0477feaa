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
  /** The head cannot be deeper than this under the ground, metres, to one sd. */
  headUnderGround: 0.05,
  headUnderGroundSd: 0.05,
  /** A lean mirrored about square is put up as a second answer where it is at most this many sds from the first. */
  twinWithin: 3,
  /** Log odds under which the second answer is dropped: the lean is settled. */
  settledAt: -6,
} as const;
