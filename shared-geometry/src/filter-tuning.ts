/** Every number that sets how the filter over a rep behaves. */
export const filterTuning = {
  /**
   * Angular acceleration that is not foreseen, rad/s2: at rest, for each rad/s of the pace, and for its square. Higher follows faster and smooths
   * less. As on the demonstrated motions, the pace being the fastest turn within a quarter of a second (`npm run accuracy:lift` uses the same motions).
   */
  turnUnrest: [0.6, 1.5, 0.12],
  /** Acceleration of the hands that is not foreseen, m/s2: at rest, for each m/s of their pace, and for its square. */
  handUnrest: [0.3, 0.9, 0.5],
  /** Such an acceleration lasts for this much of a turn (radians at the pace), within these bounds, seconds. */
  unrestTurn: 0.6,
  leastUnrest: 0.08,
  mostUnrest: 0.4,
  /** Where only the past is known, the pace dies away over this long, seconds. */
  paceLasts: 0.6,
  /** And it is no less than this, rad/s and m/s: a swing may set off at any time. Higher follows a start faster and smooths less at rest. */
  leastTurnPace: 1.5,
  leastHandPace: 1,
  /** Where all is known, the pace counts this far to either side, seconds. */
  paceWithin: 0.25,
  /** One sd of speed (m/s) and turn (rad/s) at the first picture. */
  firstSpeedSd: 1,
  firstRateSd: 4,
  /** Share of the depth prior's variance that stays the same through a rep. */
  depthBiasShare: 0.8,
  /** One sd of the grip-to-head length through a rep, metres: the club's length and where the hands hold it. */
  lengthBiasSd: 0.026,
  /** How long a tracker's error lasts, seconds: pictures closer together than twice this are not independent. */
  errorsLast: 0.03,
  /** Beyond this many sds (of five numbers together) a picture pulls no harder. */
  robustBeyond: 3.5,
  /** Beyond this many of its own sds from what all pictures say, a picture loses weight altogether: the line was another one. */
  distrustBeyond: 10,
  /** An answer that lies further than this many sds, its own and the picture's, from what a picture shows is not known better than that. Lower: fewer wrong bands, fewer decided. */
  againstPicture: 3,
  /** A picture's own lean is looked for about the lean that all pictures make likeliest: within this, one sd, radians. */
  chosenLeanSd: 0.35,
  /** Hands under and over these heights (metres) are low and high, over a span of so many metres. */
  lowHands: 1.25,
  highHands: 1.35,
  handHeightSpread: 0.25,
  /** Hands this far (metres) to one side of the ball are plainly on that side. */
  sideSpread: 0.15,
  /** With low hands plainly behind the ball the shaft points back by at least this (x of its direction). Higher: quicker to see a start, harder on odd ones. */
  headBefore: 0.5,
  /** Nats a second against a shaft that points wholly the unusual way. Higher settles the lean sooner by habit. */
  againstHabit: 40,
  /** One picture in so many has its head end anywhere along the line. */
  wrongHead: 0.02,
  /** A head deeper than this (metres) is under the ground, and nats a second for each metre more. */
  headUnderGround: 0.08,
  againstUnderGround: 100,
  /** Pictures between which leans are weighed are this far apart: at least, at most (seconds), and how much the shaft changes in the picture, as a share of its length. */
  leastNodeSeconds: 0.012,
  mostNodeSeconds: 0.07,
  nodeChange: 0.15,
} as const;
