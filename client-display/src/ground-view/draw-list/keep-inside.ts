import type { GroundFrame } from "./ground-frame.ts";
import type { MarkShape, ScreenPoint } from "./shapes.ts";

/** A place outside the view is shown at its edge, by a triangle that points out. */
export function keepInside(
  frame: GroundFrame,
  point: ScreenPoint,
  margin: number,
): { readonly at: ScreenPoint; readonly outside: MarkShape | null } {
  const { area } = frame;
  const at = {
    x: Math.min(Math.max(point.x, area.x + margin), area.x + area.width - margin),
    y: Math.min(Math.max(point.y, area.y + margin), area.y + area.height - margin),
  };
  const right = point.x - at.x;
  const down = point.y - at.y;
  const reach = Math.max(Math.abs(right), Math.abs(down));
  if (reach <= margin) return { at, outside: null };
  if (reach === Math.abs(down)) return { at, outside: down < 0 ? "triangle-up" : "triangle-down" };
  return { at, outside: right < 0 ? "triangle-left" : "triangle-right" };
}
