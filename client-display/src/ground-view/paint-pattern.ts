import type { Paint, PatternName, Rect } from "./draw-list/shapes.ts";
import { setStroke, type Painter } from "./painter.ts";

/** Straight strokes or dots drawn over the colour, so that the pattern lies still when the strip's edge moves. */
export function paintPattern(painter: Painter, rect: Rect, pattern: PatternName, colour: Paint, scale: number): void {
  const { context, colours } = painter;
  context.save();
  context.beginPath();
  context.rect(rect.x, rect.y, rect.width, rect.height);
  context.clip();
  context.fillStyle = colours[colour];
  context.fillRect(rect.x, rect.y, rect.width, rect.height);
  const step = Math.max(8, scale);
  context.beginPath();
  if (pattern === "hatch") {
    setStroke(painter, "ink", step / 7, []);
    const first = Math.floor((rect.x - rect.y - rect.height) / step) * step;
    for (let at = first; at < rect.x + rect.width - rect.y; at += step) {
      context.moveTo(at + rect.y, rect.y);
      context.lineTo(at + rect.y + rect.height, rect.y + rect.height);
    }
    context.stroke();
  } else {
    context.fillStyle = colours.ink;
    const radius = step / 8;
    for (let row = Math.floor(rect.y / step); row * step <= rect.y + rect.height; row++) {
      const shift = row % 2 === 0 ? 0 : step / 2;
      for (let x = Math.floor(rect.x / step) * step + shift; x <= rect.x + rect.width; x += step) {
        context.moveTo(x + radius, row * step);
        context.arc(x, row * step, radius, 0, 2 * Math.PI);
      }
    }
    context.fill();
  }
  context.restore();
}
