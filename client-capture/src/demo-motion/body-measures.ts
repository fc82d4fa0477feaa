/**
 * Lengths of the body in metres, as shares of the standing height: Drillis and Contini's segment lengths as given in Winter,
 * Biomechanics and Motor Control of Human Movement (from memory), joints a little inside of the outline.
 */
export interface BodyMeasures {
  readonly upperArm: number;
  readonly forearm: number;
  /** Wrist to the middle of the closed hand. */
  readonly hand: number;
  readonly thigh: number;
  readonly shank: number;
  /** Ankle above the sole. */
  readonly ankle: number;
  readonly foot: number;
  /** Heel to below the ankle, along the foot. */
  readonly heelToAnkle: number;
  readonly halfHips: number;
  readonly halfShoulders: number;
  /** Middle of the hips to the middle between the shoulder joints, and on to the neck. */
  readonly trunk: number;
  readonly neckRise: number;
  /** Base of the neck to the middle of the head. */
  readonly headRise: number;
}

export function bodyMeasures(height: number): BodyMeasures {
  return {
    upperArm: 0.18 * height,
    forearm: 0.148 * height,
    hand: 0.045 * height,
    thigh: 0.245 * height,
    shank: 0.246 * height,
    ankle: 0.045 * height,
    foot: 0.155 * height,
    heelToAnkle: 0.035 * height,
    halfHips: 0.052 * height,
    halfShoulders: 0.107 * height,
    trunk: 0.272 * height,
    neckRise: 0.03 * height,
    headRise: 0.098 * height,
  };
}
