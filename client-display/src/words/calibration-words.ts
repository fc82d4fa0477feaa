import type { Calibration } from "@overcue/shared-geometry/camera";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";

/** The mark that goes with everything read through a camera of that kind; empty where it was measured. */
export const calibrationWords: Readonly<Record<Calibration, string>> = {
  station: "",
  demo: "demo golfer",
  uncalibrated: "uncalibrated",
  suspect: "camera moved?",
};

/** The same with what follows from it: a baseline counts no rep that was read through a camera nobody measured. */
export function cautionWords(calibration: Calibration, practice: PracticeState | null): string {
  const words = calibrationWords[calibration];
  const notCounted = practice?.mode === "baseline" && (calibration === "uncalibrated" || calibration === "suspect");
  return notCounted ? `${words}\nnot counted` : words;
}
