/**
 * Every number of the shaft search that was chosen and not derived, in one record. Lengths are in torso lengths (middle of
 * shoulders to middle of hips in the picture), angles in degrees, evidence in nats (natural log of odds, shaft against not).
 */
export const shaftTuning = {
  /** Working pixels a torso at most takes. Up: finer and slower (cost grows with the third power). */
  workingTorso: 64,
  /** Turn between two neighbouring directions of the sweep. Down: finer and slower. */
  sweepStep: 1.5,
  /** How far out of the hands the sweep goes. Up: longer clubs nearer to the camera, slower. */
  reach: 2.5,
  /** Half width of the strip of parallel lines searched about the hands. Up: forgives a worse pose, lets in more clutter. */
  offsetReach: 0.3,
  /** Standard deviation of the hands' place across the shaft as the pose gives it. Up: trusts the pose less. */
  offsetSd: 0.11,
  /** Nearest distance from the hands that counts: the hands themselves lie nearer. */
  nearest: 0.14,
  /** Shortest run that can be a shaft. */
  shortest: 0.35,
  /** Pixels along a line that are summed before contrast is judged. Up: less noise, blunter turns. */
  blockLength: 4,
  /** Contrast in grey levels that is added to the local texture. Up: fainter lines count less. */
  contrastFloor: 1.6,
  /** Evidence per torso of line: slope against normalised contrast, and where it crosses zero. */
  contrastSlope: 8,
  contrastZero: 1.25,
  /** Evidence per torso of line at worst: what a stretch without any line costs. Down: gaps cost more. */
  gapEvidence: -7,
  /** Evidence per torso of line at best. Up: one strong stretch can carry a line. */
  fullEvidence: 22,
  /** Weight of contrast that was not there one picture before. Up: what stands still counts less. */
  motionWeight: 0.8,
  /** Share of what is found on the far side of the hands that counts against a line (a post runs through). */
  throughWeight: 0.5,
  /** Evidence under which nothing is reported. Up: fewer false finds, more `lost`. */
  leastEvidence: 4,
  /** Most that a jump away from the expected direction costs. Up: sticks to what it has. */
  jumpCost: 4,
  /** Candidates kept for a picture. */
  candidates: 8,
  /** Least turn between two kept candidates. */
  candidateApart: 6,
} as const;

export type ShaftTuning = { readonly [Name in keyof typeof shaftTuning]: number };
