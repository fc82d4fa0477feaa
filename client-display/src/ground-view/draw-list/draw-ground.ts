import { bandIntervals } from "@overcue/shared-geometry/band-interval";
import type { BandLayout } from "@overcue/shared-geometry/bands";
import { stripOf, type GroundFrame } from "./ground-frame.ts";
import { shoeOutlines } from "./shoe-outline.ts";
import type { DrawList, Shape } from "./shapes.ts";

/** Half of a 4 ft practice stick. */
const halfStick = 0.61;
/** A golf ball is at least 42.67 mm across (Equipment Rules 2019); drawn twice as large to be seen from three metres. */
export const ballRadius = 0.043;

/** The strips of the ground, under everything else. */
export function drawStrips(frame: GroundFrame, layout: BandLayout): DrawList {
  const shapes: Shape[] = [{ kind: "rect", rect: frame.area, fill: "paper", alpha: 1 }];
  for (const span of bandIntervals(layout)) {
    const strip = stripOf(frame, span.from, span.to);
    if (strip !== null && span.band.endsWith("-line"))
      shapes.push({ kind: "rect", rect: strip, fill: "strip", alpha: 1 });
  }
  return shapes;
}

/** What lies on the ground: the three sticks, the feet and the ball. */
export function drawStation(frame: GroundFrame, layout: BandLayout, lineWidth: number): DrawList {
  const shapes: Shape[] = [];
  for (const y of [0, layout.toeLine, layout.heelLine]) {
    shapes.push({
      kind: "line",
      from: frame.toScreen(-halfStick, y),
      to: frame.toScreen(halfStick, y),
      paint: "ink",
      width: lineWidth,
      dash: [],
      alpha: 1,
    });
  }
  for (const shoe of shoeOutlines(layout.toeLine, layout.heelLine)) {
    shapes.push({
      kind: "outline",
      points: shoe.map(({ x, y }) => frame.toScreen(x, y)),
      stroke: "ink",
      fill: "paper",
      width: Math.max(2, lineWidth / 2),
      alpha: 1,
    });
  }
  const ball = ballRadius * frame.pixelsPerMetre;
  shapes.push({
    kind: "mark",
    shape: "ring",
    centre: frame.toScreen(0, 0),
    size: 2 * ball,
    paint: "ink",
    halo: "paper",
    alpha: 1,
  });
  return shapes;
}
