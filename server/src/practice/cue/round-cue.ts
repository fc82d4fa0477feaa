import { bandAt } from "@overcue/shared-geometry/band-interval";
import type { BandLayout } from "@overcue/shared-geometry/bands";
import { stationLines } from "@overcue/shared-geometry/station";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import { lineAt, middleOf, resolveBand, type GroundStretch } from "../drill/resolve-stretch.ts";

/**
 * Draws a felt place onto a stick, or onto the middle of a whole band between sticks, where one is near: a stick is easier to aim at than a number of centimetres.
 * Sticks go before bands, the nearest first. `within`: how near counts, metres. `allowed`: the rounded place never leaves this stretch (closed),
 * so rounding makes no move larger than the rule that chose the place allows. Nothing near: the place as it is.
 */
export function roundCue(felt: Metres, layout: BandLayout, within: number, allowed: GroundStretch): Metres {
  const lines = stationLines.map((line) => lineAt(line, layout));
  const bands = (["ball-to-toe", "toe-to-heel"] as const).map((band) => middleOf(resolveBand(band, layout)));
  for (const places of [lines, bands]) {
    const near = places
      .filter((place) => Math.abs(place - felt) <= within && place >= allowed.from && place <= allowed.to)
      .toSorted((a, b) => Math.abs(a - felt) - Math.abs(b - felt));
    if (near[0] !== undefined) return near[0];
  }
  return felt;
}

/** The stretch that is to be felt about a place: the line's band or the whole band where the place is its middle, else one tolerance either side. */
export function feltStretch(felt: Metres, layout: BandLayout): GroundStretch {
  const band = resolveBand(bandAt(felt, layout), layout);
  if (Math.abs(middleOf(band) - felt) < 1e-9 * layout.heelLine) return band;
  return { from: metres(felt - layout.tolerance), to: metres(felt + layout.tolerance) };
}
