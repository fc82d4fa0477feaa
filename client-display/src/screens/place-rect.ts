import type { CSSProperties } from "react";
import type { Rect } from "../ground-view/draw-list/shapes.ts";

/** A rectangle of the layout as the style of an absolutely placed element; nothing shown before there is one. */
export function place(rect: Rect | undefined): CSSProperties {
  if (rect === undefined) return { visibility: "hidden" };
  return { left: rect.x, top: rect.y, width: rect.width, height: rect.height };
}
