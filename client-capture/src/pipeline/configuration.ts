import type { CameraSpread } from "@overcue/shared-geometry/camera-spread";
import type { Calibration, Camera } from "@overcue/shared-geometry/camera";
import type { RollingShutter } from "@overcue/shared-geometry/rolling-shutter";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { RodColour } from "../shaft/rod-likeness.ts";

/** What the stages are told beforehand. */
export interface Configuration {
  readonly settings: StationSettings;
  /** Null: a default camera is assumed for the first picture's size, and everything is marked uncalibrated. */
  readonly camera: Camera | null;
  readonly calibration: Calibration;
  /** How well `camera` is known, where it was solved; left out: it is taken at its word. */
  readonly spread?: CameraSpread;
  /** How the camera reads its picture; left out: not known. */
  readonly shutter?: RollingShutter;
  /** The practice rod along the shaft, its colour as `learnRodColour` had it from one tap; null or left out: none is known. */
  readonly rod?: { readonly colour: RodColour } | null;
  /** The sticks that `camera` was solved from, where it was: they are looked at again between reps. */
  readonly sticks?: readonly StickInImage[];
}
