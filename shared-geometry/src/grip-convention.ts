import type { StationSettings } from "./station.ts";
import { metres, type Metres } from "./units.ts";

/**
 * The grip point is the middle of the two hands. It lies this far from the butt end along the shaft: a hand's breadth and a half with the
 * upper hand a finger's breadth below the end. Common practice, no source; golfers differ by about 0.02.
 */
export const gripFromButt: Metres = metres(0.12);

/** From the grip point to the club head along the shaft. */
export function gripToHead(settings: Pick<StationSettings, "clubLength">): Metres {
  return metres(settings.clubLength - gripFromButt);
}
