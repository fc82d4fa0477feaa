import type { Calibration, Camera } from "@overcue/shared-geometry/camera";
import type { StationSettings } from "@overcue/shared-geometry/station";

/** What the stages are told beforehand. */
export interface Configuration {
  readonly settings: StationSettings;
  /** Null: a default camera is assumed for the first picture's size, and everything is marked uncalibrated. */
  readonly camera: Camera | null;
  readonly calibration: Calibration;
}
