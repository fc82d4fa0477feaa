import type { Calibration } from "@overcue/shared-geometry/camera";

/** The mark that goes with everything read through a camera of that kind; empty where it was measured. */
export const calibrationWords: Readonly<Record<Calibration, string>> = {
  station: "",
  demo: "demo golfer",
  uncalibrated: "uncalibrated",
  suspect: "camera moved?",
};
