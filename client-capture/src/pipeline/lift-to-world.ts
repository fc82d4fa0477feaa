import type { CameraSpread } from "@overcue/shared-geometry/camera-spread";
import type { Camera } from "@overcue/shared-geometry/camera";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { observeShaft } from "@overcue/shared-geometry/lift-observation";
import { liftShaft } from "@overcue/shared-geometry/lift-shaft";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { metres } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { BodyInWorld } from "./body-in-world.ts";
import { chooseLean, type LeanState } from "./choose-lean.ts";

/** The shaft in the world, or null where there is no shaft or no hands' depth to place it at. */
export function liftToWorld(
  state: LeanState,
  shaft: ShaftInImage,
  body: BodyInWorld | null,
  camera: Camera | CameraSpread,
  settings: StationSettings,
): { readonly state: LeanState; readonly output: ShaftInWorld | null } {
  if (shaft.status === "lost" || body === null) return { state, output: null };
  const { value, sd } = body.handsX;
  const depth = { kind: "along-target-line", x: metres(value), sd: metres(sd) } as const;
  const lift = liftShaft(camera, observeShaft(shaft, depth), settings);
  return lift.ok ? chooseLean(state, lift.candidates, gripToHead(settings)) : { state, output: null };
}
