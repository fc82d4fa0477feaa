/**
 * How the simulated tracker errs, as the real one does on rendered scenes: fitted by eye to the tracker's answers on the scenes
 * `slow+rod` 2 and `full 60 1/500` 1; of the head on `slow+rod` 103, `slow+bare` 101, `flow 60` 102 and `full 60 1/500` 102 too.
 * Angles in degrees, lengths in pixels or as shares.
 */
export interface SightErrors {
  /** Error of the angle that no good picture gets under; pixels of the line's place at each end; share of the exposure's turn. */
  readonly angleFloor: number;
  readonly edge: number;
  readonly blurShare: number;
  /** Least stated standard deviation, and how far the stated one scatters about the true one (natural log). */
  readonly leastStated: number;
  readonly statedScatter: number;
  /** One answer in so many is this many times worse than it says. */
  readonly wildShare: number;
  readonly wildFactor: number;
  /** Error of the hands' place along the shaft, metres; across it, pixels. */
  readonly gripAlong: number;
  readonly gripAcross: number;
  /** What is stated for the line's place across, pixels. */
  readonly acrossStated: number;
  /** Chance that the line's end is plain to see; how far before the head's end it then is at most, metres, the same all session long; its error and the stated one, shares of the length in the picture. */
  readonly headPlain: number;
  readonly plainBefore: number;
  readonly plainAlong: number;
  readonly plainStated: number;
  /** One plain end in so many is taken where the neck begins, so much before, metres. */
  readonly neckShare: number;
  readonly neck: number;
  /** Elsewhere: error of the head's place along the shaft as a share of the shaft's length in the picture, its lasting part, and the stated one. */
  readonly headAlong: number;
  readonly headBias: number;
  readonly headStated: number;
  /** One head in so many is taken where the shaft fades, short by up to this share of its length. */
  readonly headShortShare: number;
  readonly headShort: number;
  /** Chance that a shaft that shows well, poorly, hardly is tracked. */
  readonly trackedWell: number;
  readonly trackedPoorly: number;
  readonly trackedHardly: number;
  /** Errors wander: the time after which one is forgotten, milliseconds; and the share of the variance that does not wander. */
  readonly memoryMs: number;
  readonly freshShare: number;
}

export const usualSightErrors: SightErrors = {
  angleFloor: 0.15,
  edge: 0.35,
  blurShare: 0.12,
  leastStated: 0.35,
  statedScatter: 0.2,
  wildShare: 0.01,
  wildFactor: 4,
  gripAlong: 0.05,
  gripAcross: 1,
  acrossStated: 0.6,
  headPlain: 0.7,
  plainBefore: 0.035,
  plainAlong: 0.005,
  plainStated: 0.016,
  neckShare: 0.15,
  neck: 0.05,
  headAlong: 0.06,
  headBias: 0.02,
  headStated: 0.065,
  headShortShare: 0.12,
  headShort: 0.4,
  trackedWell: 0.985,
  trackedPoorly: 0.5,
  trackedHardly: 0.03,
  memoryMs: 70,
  freshShare: 0.5,
};
