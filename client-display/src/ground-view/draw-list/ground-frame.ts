import type { BandLayout } from "@overcue/shared-geometry/bands";
import type { Handed } from "@overcue/shared-geometry/station";
import type { Rect, ScreenPoint } from "./shapes.ts";

/**
 * Where the screen lies, seen from the golfer: across the ball line in front of them, beside the ball on the target's
 * side, or behind the ball on the side away from the target. The golfer looks over the ground towards it, so its top
 * edge points that way.
 */
export const screenPlaces = ["in-front", "target-side", "away-side"] as const;
export type ScreenPlace = (typeof screenPlaces)[number];

export interface GroundFrame {
  readonly area: Rect;
  readonly pixelsPerMetre: number;
  /** World x and y in metres to CSS pixels of the canvas. */
  readonly toScreen: (x: number, y: number) => ScreenPoint;
  /** Whether the bands lie as rows (the screen in front) or stand as columns (beside, behind). */
  readonly bands: "rows" | "columns";
  /** The part of the ground in view along y, far to near. */
  readonly nearest: number;
  readonly farthest: number;
}

interface Axis {
  readonly x: number;
  readonly y: number;
}

/** Beyond the ball line in view, behind the heels in view, and the least width of ground along the target line, metres. */
const beyondBall = 0.42;
const behindHeels = 0.2;
const alongTarget = 1.0;

/**
 * The map from the ground to the screen: one scale for both directions, everything from beyond the ball to behind the
 * heels in view, the feet in the middle of the other direction. The world of a left-handed golfer is mirrored in y
 * already, so only the screen's right-hand direction differs.
 */
export function groundFrame(area: Rect, layout: BandLayout, handed: Handed, place: ScreenPlace): GroundFrame {
  const { up, right } = axesOf(handed, place);
  const bands = place === "in-front" ? "rows" : "columns";
  const depth = bands === "rows" ? area.height : area.width;
  const breadth = bands === "rows" ? area.width : area.height;
  const span = beyondBall + layout.heelLine + behindHeels;
  const pixelsPerMetre = Math.max(1, Math.min(depth / span, breadth / alongTarget));
  const middleY = (layout.heelLine + behindHeels - beyondBall) / 2;
  const halfInView = depth / pixelsPerMetre / 2;
  const centre = { x: area.x + area.width / 2, y: area.y + area.height / 2 };
  return {
    area,
    pixelsPerMetre,
    bands,
    farthest: middleY - halfInView,
    nearest: middleY + halfInView,
    toScreen: (x, y) => ({
      x: centre.x + pixelsPerMetre * (x * right.x + (y - middleY) * right.y),
      y: centre.y - pixelsPerMetre * (x * up.x + (y - middleY) * up.y),
    }),
  };
}

function axesOf(handed: Handed, place: ScreenPlace): { up: Axis; right: Axis } {
  const mirror = handed === "right" ? 1 : -1;
  switch (place) {
    case "in-front":
      return { up: { x: 0, y: -1 }, right: { x: -mirror, y: 0 } };
    case "target-side":
      return { up: { x: 1, y: 0 }, right: { x: 0, y: -mirror } };
    case "away-side":
      return { up: { x: -1, y: 0 }, right: { x: 0, y: mirror } };
  }
}

/** The strip of the canvas between two distances from the ball line, over the whole of the other direction, cut to the view. */
export function stripOf(frame: GroundFrame, from: number, to: number): Rect | null {
  const near = Math.min(Math.max(from, to), frame.nearest);
  const far = Math.max(Math.min(from, to), frame.farthest);
  if (near <= far) return null;
  const a = frame.toScreen(0, far);
  const b = frame.toScreen(0, near);
  const { area } = frame;
  return frame.bands === "rows"
    ? { x: area.x, y: Math.min(a.y, b.y), width: area.width, height: Math.abs(a.y - b.y) }
    : { x: Math.min(a.x, b.x), y: area.y, width: Math.abs(a.x - b.x), height: area.height };
}
