import type { Painter } from "../session/phone-session.ts";
import { drawFinding } from "./draw-finding.ts";
import { drawUpright, fitCanvas } from "./draw-upright.ts";

/** Paints pictures on one canvas and what is found in them on another one above it. */
export function makePainter(picture: HTMLCanvasElement, overlay: HTMLCanvasElement): Painter {
  const below = picture.getContext("2d", { alpha: false });
  const above = overlay.getContext("2d");
  return {
    picture(frame) {
      if (below !== null) drawUpright(below, frame);
    },
    finding(output) {
      if (above === null) return;
      fitCanvas(overlay, output.picture.width, output.picture.height);
      above.clearRect(0, 0, overlay.width, overlay.height);
      drawFinding(above, output);
    },
  };
}
