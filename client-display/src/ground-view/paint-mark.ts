import type { MarkShape, Paint, ScreenPoint, Shape } from "./draw-list/shapes.ts";
import { setStroke, tracePolygon, type Painter } from "./painter.ts";

type Mark = Extract<Shape, { kind: "mark" }>;

/**
 * A mark that can be read on any strip: ink under its colour, the halo around both. Live marks are open, with a dot in
 * the middle, so that the band beneath stays in sight and the place is exact although the mark is large.
 */
export function paintMark(painter: Painter, mark: Mark): void {
  const { context, colours } = painter;
  const { shape, centre, size, paint, halo } = mark;
  const trace = (): void => {
    traceMark(context, shape, centre, size);
  };
  if (shape === "live-round" || shape === "live-square") {
    strokeInTurn(
      painter,
      trace,
      [
        [halo, 0.3],
        ["ink", 0.23],
        [paint, 0.13],
      ],
      size,
    );
    context.beginPath();
    context.arc(centre.x, centre.y, Math.max(3, size * 0.08), 0, 2 * Math.PI);
    context.fillStyle = colours.ink;
    context.fill();
    setStroke(painter, halo, Math.max(1.5, size * 0.03), []);
    context.stroke();
    return;
  }
  strokeInTurn(
    painter,
    trace,
    [
      [halo, 0.22],
      ["ink", 0.14],
    ],
    size,
  );
  trace();
  context.fillStyle = colours[shape === "ring" ? halo : paint];
  context.fill();
}

function strokeInTurn(
  painter: Painter,
  trace: () => void,
  strokes: readonly (readonly [paint: Paint, shareOfSize: number])[],
  size: number,
): void {
  for (const [paint, share] of strokes) {
    trace();
    setStroke(painter, paint, size * share, []);
    painter.context.stroke();
  }
}

function traceMark(context: CanvasRenderingContext2D, shape: MarkShape, { x, y }: ScreenPoint, size: number): void {
  const half = size / 2;
  switch (shape) {
    case "ring":
    case "disc":
    case "live-round":
      context.beginPath();
      context.arc(x, y, half * (shape === "live-round" ? 0.8 : 0.88), 0, 2 * Math.PI);
      context.closePath();
      return;
    case "diamond":
    case "live-square":
    case "triangle-up":
    case "triangle-down":
    case "triangle-left":
    case "triangle-right":
      tracePolygon(
        context,
        corners[shape].map(([right, down]) => ({ x: x + right * half, y: y + down * half })),
      );
  }
}

type Cornered = Exclude<MarkShape, "ring" | "disc" | "live-round">;

const corners: Readonly<Record<Cornered, readonly (readonly [right: number, down: number])[]>> = {
  diamond: [
    [0, -0.9],
    [0.9, 0],
    [0, 0.9],
    [-0.9, 0],
  ],
  "live-square": [
    [-0.68, -0.68],
    [0.68, -0.68],
    [0.68, 0.68],
    [-0.68, 0.68],
  ],
  "triangle-up": [
    [0, -0.9],
    [0.9, 0.7],
    [-0.9, 0.7],
  ],
  "triangle-down": [
    [0, 0.9],
    [0.9, -0.7],
    [-0.9, -0.7],
  ],
  "triangle-left": [
    [-0.9, 0],
    [0.7, 0.9],
    [0.7, -0.9],
  ],
  "triangle-right": [
    [0.9, 0],
    [-0.7, 0.9],
    [-0.7, -0.9],
  ],
};
