import { bandInterval } from "@overcue/shared-geometry/band-interval";
import type { BandLayout } from "@overcue/shared-geometry/bands";
import type { StationLine } from "@overcue/shared-geometry/station";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import type { Stretch } from "./drill-schema.ts";

/** A stretch of y on this station, metres, closed at both ends, `from` not above `to`. */
export interface GroundStretch {
  readonly from: Metres;
  readonly to: Metres;
}

/**
 * Where a drill's stretch lies on a laid station. The outer bands are open-ended; here they reach as far beyond their line as the heel line lies
 * behind the toe line (a shoe's length), so that every stretch has a middle to aim at.
 */
export function resolveStretch(stretch: Stretch, layout: BandLayout): GroundStretch {
  if ("band" in stretch) return resolveBand(stretch.band, layout);
  const from = lineAt(stretch.from.line, layout) + stretch.from.offset;
  const to = lineAt(stretch.to.line, layout) + stretch.to.offset;
  return { from: metres(Math.min(from, to)), to: metres(Math.max(from, to)) };
}

/** The band as a stretch with two ends; see `resolveStretch` for the outer ones. */
export function resolveBand(band: Parameters<typeof bandInterval>[0], layout: BandLayout): GroundStretch {
  const { from, to } = bandInterval(band, layout);
  const reach = layout.heelLine - layout.toeLine;
  return {
    from: metres(Number.isFinite(from) ? from : to - reach),
    to: metres(Number.isFinite(to) ? to : from + reach),
  };
}

/** The middle of a stretch: the place to aim at. */
export function middleOf({ from, to }: GroundStretch): Metres {
  return metres((from + to) / 2);
}

export function lineAt(line: StationLine, layout: BandLayout): Metres {
  if (line === "toe-line") return layout.toeLine;
  return line === "heel-line" ? layout.heelLine : metres(0);
}
