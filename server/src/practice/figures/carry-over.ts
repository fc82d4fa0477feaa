import { metres, type Metres } from "@overcue/shared-geometry/units";
import { middleOf, type GroundStretch } from "../drill/resolve-stretch.ts";
import { share, type Share } from "../units.ts";
import type { PlaceSummary } from "./summarise-places.ts";

/** Share of the wanted change reached in reality, with one standard deviation. */
export interface CarryOver {
  readonly value: Share;
  readonly sd: Share;
}

/** From the baseline to the middle of what is wanted, signed; 0 where the baseline already lies inside (both ends closed). */
export function wantedChange(baseline: Metres, wanted: GroundStretch): Metres {
  if (baseline >= wanted.from && baseline <= wanted.to) return metres(0);
  return metres(middleOf(wanted) - baseline);
}

/**
 * (place - baseline) / (wanted - baseline), its error by first order from the errors of place and baseline. Null where no change is wanted: a share of
 * nothing is not a number.
 */
export function carryOverOf(
  place: { readonly y: Metres; readonly sd: Metres },
  baseline: Pick<PlaceSummary, "median" | "sd">,
  change: Metres,
): CarryOver | null {
  if (change === 0) return null;
  const value = (place.y - baseline.median) / change;
  const sd = Math.hypot(place.sd, (value - 1) * baseline.sd) / Math.abs(change);
  return { value: share(value), sd: share(sd) };
}
