import type { CameraSpread } from "@overcue/shared-geometry/camera-spread";
import { liftShaft } from "@overcue/shared-geometry/lift-shaft";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { dot } from "@overcue/shared-geometry/vector";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { filterInput, type Sighting } from "./filter-input.ts";

/**
 * The shaft as one picture alone shows it: no motion before or after has a say, so that nothing fast is smoothed away. Of its two leans the one nearer
 * to `near`, which has no say in anything else. Null where nothing was seen.
 */
export function liftAlone(
  sighting: Sighting,
  through: CameraSpread,
  settings: StationSettings,
  near: ShaftInWorld | null,
): ShaftInWorld | null {
  const { seen } = filterInput({ ...sighting, resting: false }, through.camera, settings);
  if (seen === null) return null;
  const lift = liftShaft(through, seen, settings);
  if (!lift.ok) return null;
  const [first, second] = lift.candidates;
  if (second === undefined || near === null) return first;
  return dot(second.toHead, near.toHead) > dot(first.toHead, near.toHead) ? second : first;
}
