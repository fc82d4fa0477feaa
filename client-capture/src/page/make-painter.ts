import type { CapturedFrame } from "../frames/frame-source.ts";
import type { Painter } from "../session/phone-session.ts";
import { drawFinding } from "./draw-finding.ts";

/** Paints pictures on one canvas and what is found in them on another one above it. */
export function makePainter(picture: HTMLCanvasElement, overlay: HTMLCanvasElement): Painter {
  const below = picture.getContext("2d", { alpha: false });
  const above = overlay.getContext("2d");
  return {
    picture(frame) {
      if (below !== null) drawUpright(below, picture, frame);
    },
    finding(output) {
      if (above === null) return;
      fit(overlay, output.picture.width, output.picture.height);
      above.clearRect(0, 0, overlay.width, overlay.height);
      drawFinding(above, output);
    },
  };
}

function drawUpright(
  context: CanvasRenderingContext2D,
  canvas: HTMLCanvasElement,
  { image, rotation }: CapturedFrame,
): void {
  const [width, height] =
    "displayWidth" in image ? [image.displayWidth, image.displayHeight] : [image.width, image.height];
  const sideways = rotation === 90 || rotation === 270;
  fit(canvas, sideways ? height : width, sideways ? width : height);
  context.setTransform(1, 0, 0, 1, canvas.width / 2, canvas.height / 2);
  context.rotate((rotation * Math.PI) / 180);
  context.drawImage(image, -width / 2, -height / 2, width, height);
}

function fit(canvas: HTMLCanvasElement, width: number, height: number): void {
  if (canvas.width !== width) canvas.width = width;
  if (canvas.height !== height) canvas.height = height;
}
