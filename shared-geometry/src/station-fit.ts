import type { LayingSpread, StationPriors } from "./station-model.ts";
import type { StationSettings } from "./station.ts";
import type { StickInImage } from "./stick-in-image.ts";
import type { Pixels } from "./units.ts";
import type { LeastSquaresFit } from "./least-squares.ts";
import type { Camera } from "./camera.ts";
import type { CameraCovariance } from "./camera-spread.ts";

export interface StationInput {
  readonly sticks: readonly StickInImage[];
  readonly settings: StationSettings;
  readonly width: Pixels;
  readonly height: Pixels;
  /** From the track's settings where the device tells; else a phone's usual lens, known to 15 %. */
  readonly focal?: StationPriors["focal"];
  readonly gravity?: StationPriors["gravity"];
  readonly ball?: StationPriors["ball"];
  readonly laying?: LayingSpread;
}

export interface StationFit {
  readonly camera: Camera;
  readonly covariance: CameraCovariance | null;
  readonly leastSquares: LeastSquaresFit;
  /** How far the focal length lies from what was known of it beforehand, sds. */
  readonly focalOff: number;
}
