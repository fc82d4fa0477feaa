/**
 * The checks that the phone makes of its own set-up, by the ids that `CaptureState.checks` uses, in the order in which
 * they are put right. A check that is left out is not shown.
 */
export const setUpCheckIds = [
  "certificate",
  "body-in-frame",
  "light",
  "frame-rate",
  "sticks",
  "camera-level",
  "camera-height",
  "camera-distance",
  "hand-line",
  "club-at-top",
  "rod-colour",
  "space-clear",
] as const;

export type SetUpCheckId = (typeof setUpCheckIds)[number];
