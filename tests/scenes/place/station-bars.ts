import { stationLines, type StationLine, type StationSettings } from "@overcue/shared-geometry/station";
import type { Colour } from "../colour.ts";
import type { Bar } from "./place.ts";

const rodRadius = 0.004;

/** The station's sticks on the ground: the one on the ball line starts just past the ball, the others lie evenly beside the feet. */
export function stationBars(station: StationSettings, colour: Colour): readonly Bar[] {
  const distance: Readonly<Record<StationLine, number>> = {
    "ball-line": 0,
    "toe-line": station.toeLine,
    "heel-line": station.heelLine,
  };
  return stationLines
    .filter((line) => station.sticksPresent.includes(line))
    .map((line) => {
      const from = line === "ball-line" ? 0.1 : station.stickLength / -2;
      return {
        from: { x: from, y: distance[line], z: rodRadius },
        to: { x: from + station.stickLength, y: distance[line], z: rodRadius },
        radius: rodRadius,
        colour,
        cover: 1,
      };
    });
}
