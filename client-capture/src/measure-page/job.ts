import type { Camera } from "@overcue/shared-geometry/camera";
import type { DemoPlan } from "../demo-motion/demo-golfer-settings.ts";
import type { RodColour } from "../frames/demo-golfer/demo-colours.ts";
import type { Thinning } from "../pipeline/thinning.ts";

/** How the pose model is asked. */
export interface PosePace {
  /** About one picture in so many, as on a phone that cannot keep up; 1: about each. */
  readonly every: number;
  /** How many pictures later its answer is there, as on a phone, where the camera does not wait; 0: at once. */
  readonly late: number;
}

/** What the page behind the measuring commands is asked to do; it fetches this from the server that serves it. */
export type Job =
  | { readonly kind: "clip"; readonly clip: string; readonly station: unknown; readonly thinning: Thinning | null }
  /** One picture through the pose model alone. */
  | { readonly kind: "picture" }
  | {
      readonly kind: "demo";
      readonly plan: DemoPlan;
      readonly camera: Camera;
      readonly framesPerSecond: number;
      readonly rodColour: RodColour;
      readonly seed: number;
      readonly poses: PosePace;
      /** Whether the camera is told, or worked out from the sticks found before the golfer steps onto them. */
      readonly station: "known" | "found";
    };
