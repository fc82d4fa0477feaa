import { pixelsPerMetre, see, type Seen, type View } from "../view.ts";
import type { Piece } from "../golfer/piece.ts";

/** Tells of a point that is seen whether a piece of the body stands clearly (8 cm) in front of it as the camera sees it. */
export function hiddenBehind(view: View, pieces: readonly Piece[]): (seen: Seen) => boolean {
  const soft = pieces
    .filter(({ material }) => material.make === "soft")
    .map(({ a, b, radiusA, radiusB }) => ({ a: see(view, a), b: see(view, b), radiusA, radiusB }));
  return (seen) =>
    soft.some(({ a, b, radiusA, radiusB }) => {
      const alongX = b.x - a.x;
      const alongY = b.y - a.y;
      const square = alongX * alongX + alongY * alongY;
      const raw = square > 0 ? ((seen.x - a.x) * alongX + (seen.y - a.y) * alongY) / square : 0;
      const share = Math.min(1, Math.max(0, raw));
      const radius = radiusA + share * (radiusB - radiusA);
      const depth = a.depth + share * (b.depth - a.depth);
      const away =
        Math.hypot(seen.x - a.x - share * alongX, seen.y - a.y - share * alongY) / pixelsPerMetre(view, depth);
      return away < radius && depth - Math.sqrt(radius * radius - away * away) < seen.depth - 0.08;
    });
}
