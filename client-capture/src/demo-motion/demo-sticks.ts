import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";

/** A stick lying on the ground: its axis from the end nearer to a camera behind the golfer to the other. */
export interface DemoStick {
  readonly line: StationLine;
  readonly near: Point<"world">;
  readonly far: Point<"world">;
}

/** Radius of a stick, metres (diameter 8 mm: CHECK values, from memory). */
export const stickRadius = 0.004;

/** Where the sticks of a station lie: the ball line's a hand's breadth beyond the ball, the others beside the feet. */
export function demoSticks(station: StationSettings): readonly DemoStick[] {
  const place: Readonly<Record<StationLine, { readonly x: number; readonly y: number }>> = {
    "ball-line": { x: 0.12, y: 0 },
    "toe-line": { x: -0.7, y: station.toeLine },
    "heel-line": { x: -0.6, y: station.heelLine },
  };
  return station.sticksPresent.map((line) => ({
    line,
    near: worldPoint(place[line].x, place[line].y, stickRadius),
    far: worldPoint(place[line].x + station.stickLength, place[line].y, stickRadius),
  }));
}
