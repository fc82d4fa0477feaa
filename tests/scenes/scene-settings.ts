import type { DemoPlan } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { Colour } from "./colour.ts";
import type { Dress } from "./golfer/body-pieces.ts";
import type { ClubLook } from "./golfer/club-pieces.ts";
import type { LightName } from "./place/make-light.ts";
import type { Bar, PlaceName } from "./place/place.ts";
import type { PoseErrors } from "./pose/pose-errors.ts";
import type { SensorSettings } from "./sensor/sensor-settings.ts";

/** Everything that a rendered sequence is made from; with a seed it decides every byte. */
export interface SceneSettings {
  /** Tells scenes of one seed apart: what is drawn by lot differs from name to name. */
  readonly name: string;
  readonly camera: Camera;
  readonly framesPerSecond: number;
  /** How long each row gathers light, and from how many moments that is put together. */
  readonly exposureMs: number;
  readonly subFrames: number;
  /** From the first row's reading to the last row's, milliseconds; 0 reads all at once. */
  readonly readOutMs: number;
  /** How far the phone sways on its tripod, pixels either way. */
  readonly swayPixels: number;

  readonly plan: DemoPlan;
  /** The part of the motion that is filmed. */
  readonly fromMs: number;
  readonly toMs: number;

  readonly place: PlaceName;
  readonly light: LightName;
  readonly dress: Dress;
  readonly club: Omit<ClubLook, "bow">;
  /** Lag of the tip at 1650 degrees a second, metres; grows as the square of the speed. */
  readonly bowAtFullSpeed: number;
  readonly stickColour: Colour;
  /** Further still things of this scene: a decoy stick standing near. */
  readonly extraBars: readonly Bar[];
  /** Golfers farther down the line, swinging the same plan at another time: metres to the target and to the heels, milliseconds later. */
  readonly others: readonly { readonly x: number; readonly y: number; readonly laterMs: number }[];

  readonly sensor: SensorSettings;
  readonly pose: PoseErrors;
}
