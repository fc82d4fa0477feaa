import type { Paint, ScreenPoint } from "./draw-list/shapes.ts";

export type Colours = Readonly<Record<Paint, string>>;

/** What painting needs of a canvas: CSS pixels, the screen's pixel ratio set as the transform by the caller. */
export interface Painter {
  readonly context: CanvasRenderingContext2D;
  readonly colours: Colours;
  readonly fontFamily: string;
}

export function setStroke({ context, colours }: Painter, colour: Paint, width: number, dash: readonly number[]): void {
  context.strokeStyle = colours[colour];
  context.lineWidth = width;
  context.lineCap = dash.length === 0 ? "round" : "butt";
  context.lineJoin = "round";
  context.setLineDash([...dash]);
}

export function tracePolygon(context: CanvasRenderingContext2D, points: readonly ScreenPoint[]): void {
  context.beginPath();
  for (const [index, point] of points.entries()) {
    if (index === 0) context.moveTo(point.x, point.y);
    else context.lineTo(point.x, point.y);
  }
  context.closePath();
}
