import type { CameraSpread } from "@overcue/shared-geometry/camera-spread";
import type { Calibration, Camera } from "@overcue/shared-geometry/camera";
import type { StationSettings } from "@overcue/shared-geometry/station";

/** What the stages are told beforehand. */
export interface Configuration {
  readonly settings: StationSettings;
  /** Null: a default camera is assumed for the first picture's size, and everything is marked uncalibrated. */
  readonly camera: Camera | null;
  readonly calibration: Calibration;
  /** How well `camera` is known, where it was solved; left out: it is taken at its word. */
  readonly spread?: CameraSpread;
}
