/**
 * Every number of the shaft search that was chosen and not derived, in one record. Lengths are in torso lengths (middle of
 * shoulders to middle of hips in the picture), angles in degrees, evidence in nats (natural log of odds, shaft against not).
 */
export const shaftTuning = {
  /** Working pixels a torso at most takes, live and where there is time. Up: finer and slower (cost grows with the third power). */
  workingTorso: 90,
  workingTorsoAtLeisure: 110,
  /** Turn between two neighbouring directions of the sweep. Down: finer and slower. */
  sweepStep: 1.5,
  /** Live, a direction is looked at in every picture where its odds are above this many times even; others take turns of so many pictures. */
  wantedOdds: 0.4,
  turnsOfOthers: 15,
  /**
   * The same turns for so many seconds after a shaft was followed that is not found any more, where the sd of the hands' place is above so many torso lengths. Down: a fast shaft is
   * found again sooner, slower and more false finds.
   */
  turnsInHurry: 4,
  hurryFor: 0.5,
  hurrySd: 0.2,
  /** With more lines than this on either side of the hands every second one is judged, and then those beside the best; live. Up: slower, a thin shaft is missed less. */
  mostLines: 12,
  /** How far out of the hands the sweep goes. Up: longer clubs nearer to the camera, slower. */
  reach: 2.7,
  /** Half width of the strip of parallel lines searched about the hands. Up: forgives a worse pose, lets in more clutter. */
  offsetReach: 0.6,
  /** The strip is no wider than so many sds of the hands' place, and this much more, torso lengths. Up: slower, more clutter. */
  offsetSds: 2.5,
  offsetLeast: 0.06,
  /** Evidence lost where that sd is e times that of a pose. Up: what is found where the hands are badly known counts less. */
  spreadCost: 1.5,
  /** Standard deviation, per axis, of what all poses get wrong about the hands' place alike. Up: trusts the pose less. */
  offsetSd: 0.1,
  /** Seconds, and way of the hands, after which that error is another one; and what differs from pose to pose by itself. */
  poseMemory: 4,
  poseWay: 0.8,
  poseJitter: 0.02,
  /** Share of the distance between the two hands' places that is added to that. Up: trusts the pose less where it contradicts itself. */
  apartSd: 0.35,
  /**
   * How fast the square of the error of the hands' speed grows, square torso lengths a second cubed: in itself, for each square radian a second that the shaft turns at, and for each
   * square torso length a second that the hands go at. Up: believes sooner that the hands change their way, searches a wider strip.
   */
  handsWander: 25,
  handsWanderTurning: 8,
  handsWanderGoing: 8,
  /** Rate at which the hands' speed is lost, a second; the error of the speed of hands that are seen for the first time, torso lengths a second. */
  handsDrag: 2,
  handsSpeedSd: 1,
  /** How far the hands get from the middle of the shoulders, torso lengths. */
  armReach: 1.3,
  /** Seconds in which a shaft that is not found any more is taken to stop turning. */
  turningMemory: 0.15,
  /** Seconds between two poses from which on the hands start anew with the later one. */
  longestGap: 0.4,
  /** Seconds after which a pose says where the hands were, not where they are: nothing is looked for about them. Up: a golfer who has left is believed to hold what stands there. */
  oldestPose: 0.5,
  /** Who goes faster than this, torso lengths a second, for so many seconds walks, or is somebody else: nothing is looked for. Up: more lines on the ground that hands are carried past are taken for a shaft. Down: a swing in which the feet go is lost. */
  walkRate: 0.7,
  walkOver: 0.6,
  /** Error of the grip across the shaft's own line. Up: the line corrects the hands less. */
  lineSd: 0.04,
  /** The line moves the hands no farther from the pose than this, torso lengths, and than so many more for each radian that the shaft has turned since. */
  farthestCorrection: 0.25,
  turningCarries: 0.3,
  /** Error of a pose's hands that it did not see at all, and how much farther the line may then move them, torso lengths; less the better they were seen. */
  hiddenSd: 0.3,
  farthestHidden: 0.3,
  /** Nearest distance from the hands that counts: the hands themselves lie nearer. */
  nearest: 0.14,
  /** Shortest run that can be a shaft. */
  shortest: 0.35,
  /** Contrast in grey levels that is added to the local texture. Up: fainter lines count less. */
  contrastFloor: 1.6,
  /** Evidence per torso of line: slope against normalised contrast, and where it crosses zero. */
  contrastSlope: 8,
  contrastZero: 1.25,
  /** Evidence per torso of line at worst: what a stretch without any line costs. Down: gaps cost more. */
  gapEvidence: -7,
  /** How many times over what a line lacks next to the hands counts, before anything speaks for it. Up: a stick on the ground that points at the hands is less taken for the shaft, one whose start is hidden is lost. */
  startCost: 0.5,
  /** Evidence per torso of line at best. Up: one strong stretch can carry a line. */
  fullEvidence: 22,
  /** Fraction of a working pixel that the background may lie off unseen, while nothing sways and where it does. Up: sees less that is new. */
  stillSlack: 0.1,
  swaySlack: 0.35,
  /** Evidence that a line loses which runs on to the picture's border, or farther than any club: clutter mostly does, a club seldom. Up: clutter gets in less, a club that leaves the picture is lost sooner. */
  leavesCost: 7,
  /** Weight of contrast that was not there one picture before. Up: what stands still counts less. */
  motionWeight: 0.8,
  /** Seconds over which the standing background is averaged. Up: notices slower clubs, forgets a swaying camera later. */
  backgroundTime: 3,
  /**
   * A shaft rests that turns by no more than this, radians, its grip within so many torso lengths, for so many seconds; it has left where it is turned by so much, radians. How far beside its line and
   * beyond its end the background is then taken anew, torso lengths. Up: a rest is found oftener (the first two), seldomer (the third); what was covered looks new for longer (the fourth).
   */
  restTurn: 0.1,
  restWay: 0.15,
  restFor: 0.15,
  restLeft: 0.35,
  restWide: 0.07,
  /** How much likeness to the rod's colour is worth against brightness. Up: goes by the rod alone. */
  rodGain: 0.6,
  /** What on the far side of the hands makes the rod count as seen, nats. */
  rodEvidence: 4,
  /**
   * With a rod along the shaft: difference of evidence between the two ends that tells nothing, nats, where the stronger one is seen farther out than so many torso
   * lengths, and where it is not; half log odds a nat beyond it that the stronger end is the head's, and the most of that, again seen long and not. Up: slower (the first three) or surer to tell the head's end.
   */
  sideUnclear: 3,
  sideUnclearShort: 8,
  sideLong: 1.5,
  sideSlope: 0.25,
  sideMost: 2,
  sideMostShort: 0.3,
  /**
   * With the rod's colour known: share of its own likeness from which a place on a line is of it, least length of that, how much farther the line must go on bare on one side than on the
   * other to tell anything, torso lengths; half log odds a torso length beyond that the head is there, and the most of that. Up (the last two): bolder about which end is the head's.
   */
  colouredFrom: 0.3,
  colouredLeast: 0.25,
  bareUnclear: 0.2,
  bareSlope: 2,
  bareMost: 1,
  /** Longest that a rod shows out of the butt, torso lengths: what is longer on both sides is a rope, and on one side the head's, by at most so much half log odds. */
  rodLongest: 1.7,
  sideMostLong: 3,
  /** Seconds after which what tells the two ends apart counts in full again. Up: slower to decide which end is the head's, and to change its mind. */
  sideLook: 0.12,
  /** Seconds unseen after which a shaft that is seen at its length has come out anew. Up: where the hands are tells less often which end is the head's. */
  outMemory: 0.6,
  /** Hands' way from their mean place, torso lengths, at which what stands still stops counting. */
  stillReach: 0.12,
  /** How far a line is trusted that lies over a leg, an arm, the trunk, 0 to 1. Up: finds a shaft in front of them, and their edges. */
  legTrust: 0.15,
  armTrust: 0.35,
  bodyTrust: 0.8,
  /** How many times wider arms are marked with a rod along the shaft: their edges lead out of the hands as the butt end does. */
  sleeveWithRod: 2,
  /** Share of what is found on the far side of the hands that counts against a line (a post runs through). */
  throughWeight: 1.2,
  /** Evidence under which nothing is reported. Up: fewer false finds, more `lost`. */
  leastEvidence: 4,
  /**
   * Evidence that clutter is taken to reach by itself; above it a direction gains odds: the level that a tenth of the picture's directions
   * reach, times a scale, plus a margin, within bounds. Up: slower to believe, fewer false finds.
   */
  clutterScale: 1,
  clutterMargin: 4,
  clutterLeast: 4,
  clutterMost: 12,
  /** With a rod along the shaft, so many degrees about the strongest line are left out of that level. Up: a rod is believed sooner, and clutter near it. */
  clutterApart: 9,
  /** Odds gained per nat of evidence: neighbouring pixels and pictures are no independent witnesses. Up: bolder. */
  evidenceWeight: 0.7,
  /** Seconds after which a second look at something still counts in full again: until then it is the same look. Up: slower to believe stills. */
  stillLook: 0.25,
  /** What a look at something that stands still counts against one at something that moves: clutter mostly stands. Up: bolder at address. */
  stillWeight: 0.45,
  /** Hands' way from their mean place, torso lengths, from which what was there all along is none of theirs: farther than a pose trembles. */
  goneReach: 0.3,
  /** How far apart two places of the hands are at which they count as elsewhere, torso lengths. Up: what was there all along is sooner taken for something that they hold. */
  stayReach: 0.2,
  /**
   * Share of a line's contrast that has come since the background was taken at which it begins to count, and from which it counts wholly, where the hands have moved: a shaft that
   * they carry is new nearly everywhere. Up: fewer posts taken for a shaft, and a shaft in front of one lost sooner.
   */
  freshFrom: 0.1,
  freshTo: 0.3,
  /**
   * How well a standing thing's end is seen at the same place, and how well the way of the hands is known, torso lengths; nats that speak for the hands' carrying it
   * before anything is seen. Up: slower to tell what stands.
   */
  standSd: 0.06,
  carrySd: 0.25,
  carriedBefore: 3,
  /** How near to each other the lines on both sides of the hands must pass to be one, torso lengths. Up: more counts as going through. */
  sameLine: 0.04,
  /** The same of a line that moves, where it may be one shaft that lies on one side of the hands; most half log odds that tell which side. Up: slower to doubt where the hands are (the second). */
  sameLineMoving: 0.08,
  handsMost: 4,
  /** What is seen on both sides of the hands and longer than this together is longer than any club, torso lengths. Up: more ropes and posts taken for a shaft that lies beside wrongly seen hands. */
  longestAcross: 2.7,
  /** Most nats a picture may add: clutter of any strength comes up now and then. Up: bolder, quicker to change its mind. */
  evidenceCap: 9,
  /** Directions so near to each other are taken to see the same line, degrees. Up: steadier, blunter. */
  peakReach: 4.5,
  /** Chance that the shaft is seen at all in a picture. */
  seenChance: 0.85,
  appear: 1,
  vanish: 0.25,
  /** Chance per second of taking any direction at once (through end-on). */
  jump: 1.5,
  /** The same where the shaft is seen long: from so many torso lengths on it counts as that in part, and from so many wholly. */
  jumpLong: 0.15,
  longFrom: 0.6,
  longTo: 1.1,
  /**
   * Least length of a line that can be the shaft, torso lengths, and of one whose end does not show: what is shorter is taken to be end-on. Up: more
   * `lost` about end-on, fewer wrong.
   */
  leastLength: 0.4,
  leastHeadless: 1,
  /** The same of a line that lies on arms or legs, or so near beside them, by more than this share: a forearm's edge is as long, and leads out of the hands too. */
  leastOnLimb: 1.2,
  besideLimb: 0.1,
  mostOnLimb: 0.5,
  /** Error added to a line of `shortTo` torso lengths or less, radians, falling to none at `shortFrom`. */
  shortMost: 0.05,
  shortTo: 0.65,
  shortFrom: 0.9,
  /**
   * How the longest plausible length grows after the shaft was last seen: torso lengths at once, a second, for each radian of its turning rate, and
   * for each torso length that the hands go; and the
   * seconds after which nothing is known of it any more. Up: sooner found after end-on, more taken for it.
   */
  growAtOnce: 0.4,
  growSlow: 1.5,
  growFast: 3,
  growGoing: 1,
  growMemory: 0.5,
  /** Evidence that each torso length beyond it costs, nats. Up: less clutter taken for the shaft about end-on, more of the shaft lost. */
  beyondCost: 25,
  /** Under this plausible length an unseen shaft is put down to being end-on, torso lengths. */
  endOnUnder: 1.3,
  /** Where a shaft shows up: share that comes out anywhere, and how narrowly the rest lies about address. */
  arrivalAnywhere: 0.25,
  arrivalNarrowness: 8,
  /** Direction of the shaft at address in the picture of a camera down the line, right-handed, radians (y down). */
  addressDirection: 0.9,
  /** The same for hands held high: seldom seen so, and much less certain. */
  highDirection: -1.75,
  highNarrowness: 2,
  highAnywhere: 0.1,
  /** How high the hands are from hips (0) to shoulders (1) where they begin to count as high, and where they wholly do. */
  highFrom: 0.35,
  highTo: 0.85,
  /** With a rod along the shaft: how fast the hands go up, torso lengths a second, from where that counts like high hands for where a shaft comes out of end-on, and where it wholly does. Up: slower to tell the head's end. */
  risesFrom: 0.15,
  risesTo: 0.5,
  /** Nats a second that speak against a shaft that points up while the hands are as low as at address; the heights, hips (0) to shoulders (1), from which that counts and where it counts wholly. Up: a post behind the hands is less taken for the shaft, a club that is held up there is believed later. */
  upCost: 8,
  lowFrom: 0.15,
  lowTo: -0.05,
  /**
   * Nats a second that speak against a direction in which no club is seen at address, while such low hands rest; how far off that direction begins to count, and where it counts wholly, radians. Up: a rope or an eave behind the
   * hands is less taken for the shaft (the first); a camera farther from the line is forgiven (the other two).
   */
  asideCost: 40,
  asideFrom: 0.66,
  asideTo: 0.84,
  /** Wander of the turning rate, steps of the ladder per square root of a second. */
  rateWander: 12,
  /** Wander of the direction beyond its rate, radians per square root of a second. */
  wander: 0.1,
  /** Half width of the stretch of directions whose odds are counted together, radians. */
  nearMass: 0.12,
  /** Least odds of that stretch for an answer. Up: more `lost`, fewer wrong. */
  leastMass: 0.6,
  /** Most odds of the opposite direction at which an answer is given: half a turn off is worse than none. Up: bolder about which end is the head's. */
  mostOpposite: 0.06,
  /** How near to the odds' direction a candidate must lie to be the shaft, radians: at least as far as a peak speaks (`peakReach`). */
  candidateReach: 0.095,
  /** Widest spread at which the motion alone still gives an answer, and the least error it then states, radians. */
  predictedSpread: 0.2,
  predictedSd: 0.06,
  /** How far aside what is seen of the shaft goes from one end of the line to the other (its lit edge here, its grip's middle there), torso lengths: the shorter the line, the more that turns it. */
  goesAside: 0.0015,
  /** How many times over a fit's own error of the direction counts: parts of a line that lie next to each other err alike. */
  fitErrs: 1.6,
  /** Error of the angle (radians) and across (torso lengths) where a rod seems to lie beside the shaft and is not told apart from it; across without one. */
  rodSd: 0.004,
  rodAcross: 0.018,
  leastAcross: 0.005,
  /** The same error of the angle, picture pixels across a torso's length: a rod and a shaft that the picture cannot tell apart pull the line to and fro. */
  rodPixels: 0.25,
  /** How far beside the shaft a rod may lie, and how long a line must be, torso lengths, for the two to be told apart; the error of the angle where they are, radians. */
  rodBeside: 0.035,
  steppedFrom: 1,
  steppedSd: 0.003,
  /** Error at no odds at all for the direction shown, radians; it counts by the odds that are elsewhere. */
  doubtSd: 0.15,
  /** Seconds of exposure that a turning shaft's error is reckoned with: what a quarter of it turns is added to the error. */
  blurSeconds: 0.0004,
  /** Error of the head's place along the shaft, and how near to the border a run's end is no head, torso lengths. */
  headSd: 0.1,
  /** Growth of the head's error with the turning rate, seconds: a fast head is a smear. */
  headRate: 0.03,
  borderShare: 0.08,
  /** Error of an end so found, torso lengths: whether the head's neck still counts for the line or not. */
  lineEndSd: 0.03,
  /** Turning rate from which an unseen shaft is put down to blur, radians a second; visibility under which hands count as hidden. */
  fastRate: 8,
  handsSeen: 0.3,
  /** Pictures between a picture and its lagged answer. */
  lag: 3,
  /** Candidates fitted in a picture: live, and where there is time. */
  candidates: 3,
  candidatesAtLeisure: 8,
  /**
   * Fans, where there is time. How far beside the hands they are looked for, from where along them to where, and the shortest that counts, torso lengths. Up: forgives a worse pose (the first),
   * slower; more taken for one (the last down).
   */
  fanAside: 0.5,
  fanNearest: 0.3,
  fanReach: 2.3,
  fanShortest: 0.7,
  /** Change in quarters of a grey level that is added to the change round about, and evidence per torso of fan that no change at all falls short by. Up: fainter fans count less. */
  fanFloor: 6,
  fanZero: 5,
  /** How many fans are fitted, and how far apart their directions are at least, radians. */
  fans: 6,
  fanApart: 0.26,
  /**
   * What is no fan: edges that lie farther than so many torso lengths from their lines, carried by less than this share of the stations, a middle that is not known to so many radians, edges that do not
   * run apart by so many, or meet farther behind the hands than so many torso lengths. Up (the second and fourth down): more fans, more arms and coats among them.
   */
  fanResidual: 0.022,
  fanSupport: 0.6,
  fanSd: 0.06,
  fanTurn: 0.025,
  fanMeet: 2,
  /** Evidence that a fan must surpass to speak for its direction. */
  fanClutter: 7,
  /** Rate of turn, radians a second, from which the shaft may be a fan, and least odds of such a rate at which fans are looked for. Down: slower, more false fans. */
  fanFrom: 3,
  fanFromOdds: 0.02,
  /** Share of a fan's turn that the shaft must have turned since the picture before. */
  fanRate: 0.7,
  /** A fan's error: how many times its edges' own counts, what share of its turn and how much at least is added, radians; and across, torso lengths. */
  fanErrs: 2,
  fanShare: 0.2,
  fanLeastSd: 0.02,
  fanAcross: 0.03,
  /** Least turn between two kept candidates. */
  candidateApart: 6,
} as const;

export type ShaftTuning = { readonly [Name in keyof typeof shaftTuning]: number };

/**
 * Where a line ends, at full resolution (`findLineEnd`), torso lengths: looked for from so far before the run's end to so far beyond it. How much it stands out as a rule is taken over a stretch of the
 * way to the run's end (shares of it) and is so many grey levels at least; its sides are read so far aside, no nearer than so many pixels. A place belongs to the line that stands out by more than `half`
 * of that; an end is plain where the stretch before it, from near to far, stands out by so much at least and the one beyond by so much at most. Up (the last down): fewer ends, fewer of them wrong.
 */
export const lineEndTuning = {
  before: 0.3,
  beyond: 0.25,
  usualFrom: 0.3,
  usualTo: 0.9,
  leastContrast: 3,
  aside: 0.03,
  leastAside: 3,
  half: 0.4,
  plainNear: 0.015,
  plainFar: 0.12,
  leastBefore: 0.7,
  mostBeyond: 0.1,
} as const;
