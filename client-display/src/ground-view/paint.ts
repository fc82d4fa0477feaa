import { tagHeight, tagPadding, type DrawList, type Shape } from "./draw-list/shapes.ts";
import { paintMark } from "./paint-mark.ts";
import { paintPattern } from "./paint-pattern.ts";
import { setStroke, tracePolygon, type Painter } from "./painter.ts";

export function paint(painter: Painter, shapes: DrawList): void {
  const { context } = painter;
  for (const shape of shapes) {
    context.globalAlpha = shape.alpha;
    paintShape(painter, shape);
  }
  context.globalAlpha = 1;
}

function paintShape(painter: Painter, shape: Shape): void {
  const { context, colours } = painter;
  switch (shape.kind) {
    case "rect":
      context.fillStyle = colours[shape.fill];
      context.fillRect(shape.rect.x, shape.rect.y, shape.rect.width, shape.rect.height);
      return;
    case "pattern":
      paintPattern(painter, shape.rect, shape.pattern, shape.paint, shape.scale);
      return;
    case "frame": {
      const inset = shape.width / 2;
      setStroke(painter, shape.paint, shape.width, shape.dash);
      context.strokeRect(
        shape.rect.x + inset,
        shape.rect.y + inset,
        Math.max(0, shape.rect.width - shape.width),
        Math.max(0, shape.rect.height - shape.width),
      );
      return;
    }
    case "line":
      setStroke(painter, shape.paint, shape.width, shape.dash);
      context.beginPath();
      context.moveTo(shape.from.x, shape.from.y);
      context.lineTo(shape.to.x, shape.to.y);
      context.stroke();
      return;
    case "outline":
      tracePolygon(context, shape.points);
      if (shape.fill !== null) {
        context.fillStyle = colours[shape.fill];
        context.fill();
      }
      setStroke(painter, shape.stroke, shape.width, []);
      context.stroke();
      return;
    case "ellipse":
      paintSoftEllipse(painter, shape);
      return;
    case "mark":
      paintMark(painter, shape);
      return;
    case "tag":
      paintTag(painter, shape);
      return;
  }
}

function paintSoftEllipse({ context, colours }: Painter, shape: Extract<Shape, { kind: "ellipse" }>): void {
  const rings = 4;
  context.fillStyle = colours[shape.paint];
  context.globalAlpha = shape.alpha / rings;
  for (let ring = 1; ring <= rings; ring++) {
    const share = 0.55 + (0.45 * ring) / rings;
    context.beginPath();
    context.ellipse(shape.centre.x, shape.centre.y, shape.radiusX * share, shape.radiusY * share, 0, 0, 2 * Math.PI);
    context.fill();
  }
}

function paintTag(painter: Painter, tag: Extract<Shape, { kind: "tag" }>): void {
  const { context, colours, fontFamily } = painter;
  context.font = `700 ${tag.size.toFixed(1)}px ${fontFamily}`;
  context.textBaseline = "alphabetic";
  context.textAlign = "left";
  const padding = tag.size * tagPadding;
  const width = context.measureText(tag.text).width + 2 * padding;
  const height = tag.size * tagHeight;
  const left = tag.align === "left" ? tag.at.x : tag.align === "right" ? tag.at.x - width : tag.at.x - width / 2;
  const top = tag.at.y - height / 2;
  context.beginPath();
  context.roundRect(left, top, width, height, tag.size * 0.14);
  context.fillStyle = colours[tag.ground];
  context.fill();
  setStroke(painter, "ink", Math.max(2, tag.size / 22), []);
  context.stroke();
  context.fillStyle = colours[tag.ink];
  // Capitals and tall letters are 0.7 of the size high; tails hang 0.2 of it below.
  const middle = /[gjpqy]/.test(tag.text) ? 0.25 : 0.35;
  context.fillText(tag.text, left + padding, tag.at.y + tag.size * middle);
}
