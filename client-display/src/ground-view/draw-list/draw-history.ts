import type { BandSubject } from "@overcue/shared-geometry/checkpoints";
import type { GroundFrame } from "./ground-frame.ts";
import { keepInside } from "./keep-inside.ts";
import type { DrawList, Shape } from "./shapes.ts";

/** One place of one of the last reps. The book keeps only its distance from the ball line. */
export interface PastPlace {
  readonly subject: BandSubject;
  readonly y: number;
  readonly sd: number;
  /** 0 the newest rep, counted up. */
  readonly age: number;
}

/** The last reps' places side by side, newest in the middle of the ground and older ones farther along the target line, with their error bars. */
export function drawHistory(frame: GroundFrame, places: readonly PastPlace[], markSize: number): DrawList {
  const stepX = (markSize * 1.25) / frame.pixelsPerMetre;
  return places.flatMap(({ subject, y, sd, age }): Shape[] => {
    const x = -age * stepX;
    const { at, outside } = keepInside(frame, frame.toScreen(x, y), markSize / 2);
    return [
      {
        kind: "line",
        from: frame.toScreen(x, y - 2 * sd),
        to: frame.toScreen(x, y + 2 * sd),
        paint: "ink",
        width: Math.max(2, markSize / 10),
        dash: [],
        alpha: 1,
      },
      {
        kind: "mark",
        shape: outside ?? (subject === "butt-point" ? "disc" : "diamond"),
        centre: at,
        size: markSize,
        paint: age === 0 ? "live" : "quiet",
        halo: "paper",
        alpha: 1,
      },
    ];
  });
}
