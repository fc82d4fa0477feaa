import type { CapturedFrame } from "../frames/frame-source.ts";

/** Fills a canvas with a picture the right way up, one pixel to one. */
export function drawUpright(context: CanvasRenderingContext2D, { image, rotation }: CapturedFrame): void {
  const [width, height] =
    "displayWidth" in image ? [image.displayWidth, image.displayHeight] : [image.width, image.height];
  const sideways = rotation === 90 || rotation === 270;
  const { canvas } = context;
  fitCanvas(canvas, sideways ? height : width, sideways ? width : height);
  context.setTransform(1, 0, 0, 1, canvas.width / 2, canvas.height / 2);
  context.rotate((rotation * Math.PI) / 180);
  context.drawImage(image, -width / 2, -height / 2, width, height);
}

/** Sets a canvas to a size; setting it to the one that it has would clear it. */
export function fitCanvas(canvas: HTMLCanvasElement, width: number, height: number): void {
  if (canvas.width !== width) canvas.width = width;
  if (canvas.height !== height) canvas.height = height;
}
