/**
 * How the simulated pose model errs and lags. Jitter and wander follow the real model on the real swing of the footage: second differences of its
 * hands from answer to answer are 0.003 torso lengths at the median (standing still) and 0.02 at the ninetieth hundredth. Sizes follow what was measured with the real model on a capsule mannequin, 720x1280,
 * 3.3 m away: trail wrist 17-58 px off (4-15 cm), the lead wrist mostly hidden with visibility 0.02-0.5.
 */
export interface PoseErrors {
  /** Poses a second, and from a picture's time to its answer. */
  readonly perSecond: number;
  readonly delayMs: number;
  /** The model's own smoothing: its answer shows the body as it was this much earlier (the real model on filmed swings: its trail wrist 2 to 5 ms). */
  readonly smoothingMs: number;
  /** One standard deviation per axis of a seen wrist, of a hidden one, and of other joints, metres in the picture's plane. */
  readonly wrist: number;
  readonly hiddenWrist: number;
  readonly joint: number;
  /**
   * Errors belong to the posture that the model looks at: they wander with the hands' way, and hardly while the body stands still. The time
   * and the way of the hands (metres) after which one is forgotten.
   */
  readonly memoryMs: number;
  readonly memoryMetres: number;
  /** How far the figure's hands reach from its shoulders towards and away from the camera, as a share of how far they do (the real model on filmed golfers: 0.83). */
  readonly reach: number;
  /** What differs from answer to answer by itself, one standard deviation per axis, metres, of the hands. */
  readonly jitter: number;
}

export const usualPoseErrors: PoseErrors = {
  perSecond: 20,
  delayMs: 55,
  smoothingMs: 5,
  wrist: 0.035,
  hiddenWrist: 0.07,
  joint: 0.022,
  memoryMs: 4000,
  memoryMetres: 0.35,
  reach: 0.83,
  jitter: 0.0025,
};
