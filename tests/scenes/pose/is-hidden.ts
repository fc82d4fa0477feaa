import { pixelsPerMetre, see, type View } from "../view.ts";
import type { Vector } from "@overcue/shared-geometry/vector";
import type { Piece } from "../golfer/piece.ts";

/** Whether a piece of the body stands clearly (8 cm) in front of the point as the camera sees it. */
export function isHidden(view: View, point: Vector, pieces: readonly Piece[]): boolean {
  const seen = see(view, point);
  return pieces.some((piece) => {
    if (piece.material.make !== "soft") return false;
    const a = see(view, piece.a);
    const b = see(view, piece.b);
    const alongX = b.x - a.x;
    const alongY = b.y - a.y;
    const square = alongX * alongX + alongY * alongY;
    const raw = square > 0 ? ((seen.x - a.x) * alongX + (seen.y - a.y) * alongY) / square : 0;
    const share = Math.min(1, Math.max(0, raw));
    const radius = piece.radiusA + share * (piece.radiusB - piece.radiusA);
    const depth = a.depth + share * (b.depth - a.depth);
    const away = Math.hypot(seen.x - a.x - share * alongX, seen.y - a.y - share * alongY) / pixelsPerMetre(view, depth);
    return away < radius && depth - Math.sqrt(radius * radius - away * away) < seen.depth - 0.08;
  });
}
