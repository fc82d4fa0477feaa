import type { CameraSpread } from "@overcue/shared-geometry/camera-spread";
import type { FilterInput } from "@overcue/shared-geometry/filter-shaft";
import { liftShaft } from "@overcue/shared-geometry/lift-shaft";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { isKnown } from "./is-known.ts";

/** How far the lean of a club that is followed may be off the filter's, radians, one sd. */
const followedLeanSd = 0.5;

/**
 * A filtered shaft as it is, where it is known well. Where the filter has lost count of the lean (a club held square to the line of sight tells it nothing
 * to first order), this picture is lifted by itself about the filter's direction, which bounds the lean by its length. Null where nothing was seen either.
 */
export function saneShaft(
  filtered: ShaftInWorld,
  input: FilterInput,
  through: CameraSpread,
  settings: StationSettings,
): ShaftInWorld | null {
  if (isKnown(filtered)) return filtered;
  if (input.seen === null) return null;
  const lift = liftShaft(through, input.seen, settings, { toHead: filtered.toHead, sd: followedLeanSd });
  const [shaft] = lift.ok ? lift.candidates : [];
  return shaft !== undefined && isKnown(shaft) ? shaft : null;
}
