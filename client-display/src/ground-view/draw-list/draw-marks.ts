import { errorEllipse, type PlaceOnGround } from "./draw-live.ts";
import type { GroundFrame } from "./ground-frame.ts";
import { keepInside } from "./keep-inside.ts";
import type { DrawList } from "./shapes.ts";
import { tagOutside } from "./tag-outside.ts";

/** What a rep left on the ground: a filled mark at each checkpoint with its soft error, round for the butt, cornered for the head. */
export function drawMarks(
  frame: GroundFrame,
  places: readonly PlaceOnGround[],
  markSize: number,
  textSize: number,
): DrawList {
  return places.flatMap((place) => {
    const { at, outside } = keepInside(frame, frame.toScreen(place.x, place.y), markSize / 2);
    return [
      errorEllipse(frame, place, markSize),
      {
        kind: "mark" as const,
        shape: outside ?? (place.subject === "butt-point" ? ("disc" as const) : ("diamond" as const)),
        centre: at,
        size: markSize,
        paint: "live" as const,
        halo: "paper" as const,
        alpha: 1,
      },
      ...(outside === null ? [] : [tagOutside(frame, place, { at, outside }, { mark: markSize, text: textSize })]),
    ];
  });
}
