/** Every number that sets how sticks are found in a picture. Pixels of the picture as given. */
export const stationTuning = {
  /** How far off a thumb may have put a handle. Larger forgives more and is more easily misled. */
  dragReach: 8,
  /** How far beside the stick the ground is looked at. */
  asideReach: 5,
  /** Least spread of the ground's colour, grey levels: a ground of one colour is not without noise. */
  leastGroundSd: 2,
  /** Half the width of the profile taken across a stick to find its edges. */
  profileReach: 5.5,
  /** Of two like bars in a profile the nearer to the middle wins by this, sds of the ground a pixel. */
  nearerWins: 0.3,
  /** Rounds of fitting; each takes its profiles along the line of the round before. */
  rounds: 4,
  /** Distance between profiles along the stick. */
  profileStep: 2,
  /** Samples of a profile a pixel. */
  profileDensity: 4,
  /** Widest and narrowest that a stick may look. */
  widest: 11,
  narrowest: 0.8,
  /** How far a stick must stand out of the ground, in sds of the ground. Higher misses dull sticks, lower takes grass for one. */
  leastContrast: 1.2,
  /** Share of the profiles along a stick that must show both edges. */
  leastSeen: 0.25,
  /** Profiles of one stick differ from most by no more than these factors in width and in contrast, and come in runs of this many. */
  alikeWidth: 2,
  alikeContrast: 2.2,
  leastRun: 3,
  /** An edge farther off the line than this many sds of the others is not the stick's. */
  robustBeyond: 2.5,
  /** How far beyond the given ends the real ends are looked for, as a share of the length. */
  endReach: 0.35,
  /** The stick ends where its contrast falls under this share of its usual, for this many profiles. */
  endShare: 0.5,
  endGap: 5,
  /** Where what lies beyond an end differs by more than this (sds of the ground) from the ground beside the stick, the end is hidden by it. */
  hiddenStep: 2.5,
  /** Least error of an end along the stick, one sd. */
  leastAlongSd: 0.6,
  /** Least error of the line across, one sd. */
  leastAcrossSd: 0.05,
  /** Where a first look searches: rows from this share of the picture's height down to its foot. */
  searchFrom: 0.42,
  /** How far to the left and right a pixel is compared; a stick's half width and a bit. */
  ridgeReach: 4,
  /** A single pixel counts for at most so many sds. */
  ridgeClip: 4,
  /** Height of the pieces that are looked for, as a share of the picture's height. Longer finds fewer strangers, and misses far or low-seen sticks. */
  pieceShare: 0.028,
  /** Sticks are seen at most this far from upright (degrees), looked for at this step. */
  steepest: 64,
  slopeStep: 2,
  /** Least score of a piece, sds. Higher misses dull sticks, lower takes longer. */
  leastScore: 7,
  /** How many pieces are followed up, and how many sticks of them are tried together. */
  mostPieces: 60,
  mostSticks: 14,
  /** Between reps a stick is looked for this far to either side of where it was; it has moved when its line is off by more than `movedBy`. */
  stillReach: 2,
  movedBy: 1.5,
  /** Where it is not found there, it is looked for this far off: a bump, then a kick. It must show on this share of its length. */
  watchReach: 12,
  kickReach: 30,
  movedSeenShare: 0.6,
  /** A station's sticks are looked at again this far to either side of where a camera says, and this share of their length beyond their ends. */
  checkReach: 5,
  checkEndReach: 0.12,
  /** A stick must show on this share of its length. Lower finds sticks that feet hide, and strangers. */
  leastSeenShare: 0.25,
  /** A bar seen on more than this share of a stick's length is no stick: a club's shaft, the edge of a mat. */
  longestShare: 1.08,
  /** Squared sds a stick over which the camera of sticks that nobody pointed at is not believed. */
  greatestFoundMisfit: 5,
  /** Least error of a stick that was found and not marked, pixels, one sd: across and along. */
  foundAcrossSd: 0.35,
  foundAlongSd: 1.2,
  /** The same for a stick that stands out by one sd of the ground; it falls with the contrast. */
  dullAcrossSd: 1.5,
  dullAlongSd: 8,
} as const;
