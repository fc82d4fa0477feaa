import type { BandSubject } from "@overcue/shared-geometry/checkpoints";
import type { GroundFrame } from "./ground-frame.ts";
import { keepInside } from "./keep-inside.ts";
import type { DrawList, MarkShape, Shape } from "./shapes.ts";
import { tagOutside } from "./tag-outside.ts";

/** A place on the ground with its standard errors, metres, and what of the club it is. */
export interface PlaceOnGround {
  readonly subject: BandSubject;
  readonly x: number;
  readonly y: number;
  readonly sdX: number;
  readonly sdY: number;
}

/** The shaft seen from above: ends on the ground plan, metres. */
export interface ShaftOnGround {
  readonly grip: { readonly x: number; readonly y: number };
  readonly head: { readonly x: number; readonly y: number };
}

export interface LiveOnGround {
  readonly shaft: ShaftOnGround | null;
  readonly place: PlaceOnGround | null;
}

/** Two standard errors to either side: the true place lies within for about 19 in 20. */
const errorsShown = 2;

/** What moves with every estimate: the shaft from above, the line out of the butt end, the point and its soft error. */
export function drawLive(frame: GroundFrame, live: LiveOnGround, markSize: number, textSize: number): DrawList {
  const shapes: Shape[] = [];
  const lineWidth = Math.max(3, markSize / 10);
  const { shaft, place } = live;
  if (place !== null) shapes.push(errorEllipse(frame, place, markSize));
  if (shaft !== null) {
    const grip = frame.toScreen(shaft.grip.x, shaft.grip.y);
    if (place?.subject === "butt-point") {
      shapes.push({
        kind: "line",
        from: grip,
        to: frame.toScreen(place.x, place.y),
        paint: "ink",
        width: lineWidth / 2,
        dash: [lineWidth, lineWidth],
        alpha: 1,
      });
    }
    shapes.push({
      kind: "line",
      from: grip,
      to: frame.toScreen(shaft.head.x, shaft.head.y),
      paint: "ink",
      width: lineWidth,
      dash: [],
      alpha: 1,
    });
  }
  if (place !== null) {
    const { at, outside } = keepInside(frame, frame.toScreen(place.x, place.y), markSize / 2);
    shapes.push({
      kind: "mark",
      shape: outside ?? shapeOf(place.subject),
      centre: at,
      size: markSize,
      paint: "live",
      halo: "paper",
      alpha: 1,
    });
    if (outside !== null) shapes.push(tagOutside(frame, place, { at, outside }, { mark: markSize, text: textSize }));
  }
  return shapes;
}

/** The butt point is round, the club head square, so that neither needs its colour. */
const shapeOf = (subject: BandSubject): MarkShape => (subject === "butt-point" ? "live-round" : "live-square");

export function errorEllipse(frame: GroundFrame, place: PlaceOnGround, markSize: number): Shape {
  const along = Math.max(markSize / 2, errorsShown * place.sdX * frame.pixelsPerMetre);
  const across = Math.max(markSize / 2, errorsShown * place.sdY * frame.pixelsPerMetre);
  return {
    kind: "ellipse",
    centre: frame.toScreen(place.x, place.y),
    radiusX: frame.bands === "rows" ? along : across,
    radiusY: frame.bands === "rows" ? across : along,
    paint: "live",
    alpha: 0.35,
  };
}
