import { exactCamera } from "./camera-spread.ts";
import type { Camera } from "./camera.ts";
import { filterTuning } from "./filter-tuning.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { liftShaft } from "./lift-shaft.ts";
import { metres } from "./units.ts";
import type { StationSettings } from "./station.ts";
import type { LiftRefusal } from "./view-shaft.ts";
import type { Direction, ShaftInWorld } from "./world-shaft.ts";

/**
 * What one picture measures of the shaft, leaning about as `toHead` does. The answer's lean is the picture's own as far as its length tells it; the direction given
 * only chooses between its two leans. The spread counts what is new with each picture: of the depth, the part that does not last through a rep.
 * Camera and observation are a right-handed golfer's.
 */
export function sightOfShaft(
  observation: LiftObservation,
  camera: Camera,
  settings: Pick<StationSettings, "clubLength">,
  toHead: Direction,
): ShaftInWorld | LiftRefusal {
  const { depth } = observation;
  const lasting = filterTuning.depthBiasShare;
  const fresh = { ...observation, depth: { ...depth, sd: metres(depth.sd * Math.sqrt(1 - lasting)) } };
  const lift = liftShaft(exactCamera(camera), fresh, settings, { toHead, sd: filterTuning.chosenLeanSd });
  return lift.ok ? lift.candidates[0] : lift.reason;
}
