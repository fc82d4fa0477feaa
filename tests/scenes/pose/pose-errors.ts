/**
 * How the simulated pose model errs and lags. Sizes follow what was measured with the real model on a capsule mannequin, 720x1280,
 * 3.3 m away: trail wrist 17-58 px off (4-15 cm), the lead wrist mostly hidden with visibility 0.02-0.5.
 */
export interface PoseErrors {
  /** Poses a second, and from a picture's time to its answer. */
  readonly perSecond: number;
  readonly delayMs: number;
  /** The model's own smoothing: its answer shows the body as it was this much earlier. */
  readonly smoothingMs: number;
  /** One standard deviation per axis of a seen wrist, of a hidden one, and of other joints, metres in the picture's plane. */
  readonly wrist: number;
  readonly hiddenWrist: number;
  readonly joint: number;
  /** Errors wander: the time after which one is forgotten. */
  readonly memoryMs: number;
}

export const usualPoseErrors: PoseErrors = {
  perSecond: 20,
  delayMs: 55,
  smoothingMs: 15,
  wrist: 0.035,
  hiddenWrist: 0.07,
  joint: 0.022,
  memoryMs: 350,
};
