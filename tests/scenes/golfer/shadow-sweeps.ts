import type { Vector } from "@overcue/shared-geometry/vector";
import type { Sweep } from "../paint/sweep.ts";
import { pixelsPerMetre, see, type Seen, type View } from "../view.ts";
import type { Piece } from "./piece.ts";
import type { PiecesInTime } from "./sweep-pieces.ts";

/** Where each piece's shadow falls on the level ground, as the picture shows it. Light from below the horizon gives none. */
export function shadowSweeps(pieces: PiecesInTime, towardsSun: Vector, view: View): readonly Sweep[] {
  if (towardsSun.z < 0.05) return [];
  const [early, middle, late] = pieces;
  return middle.map((piece, index) => {
    const first = early[index] ?? piece;
    const last = late[index] ?? piece;
    const a = [first, piece, last].map((moment) => see(view, fallen(moment.a, towardsSun)));
    const b = [first, piece, last].map((moment) => see(view, fallen(moment.b, towardsSun)));
    return makeShadow(a, b, piece, view);
  });
}

function makeShadow(a: readonly Seen[], b: readonly Seen[], piece: Piece, view: View): Sweep {
  const at = (seen: readonly Seen[], moment: number): Seen => seen[moment] ?? { x: 0, y: 0, depth: 1 };
  const [fromA, fromB] = [at(a, 1), at(b, 1)];
  const length = Math.hypot(fromB.x - fromA.x, fromB.y - fromA.y) || 1;
  const across = { x: (fromB.y - fromA.y) / length, y: (fromB.x - fromA.x) / length };
  const wide = (radius: number, seen: Seen): number => {
    const flat = view.camera.position.z / seen.depth;
    return radius * pixelsPerMetre(view, seen.depth) * Math.hypot(across.x, across.y * flat);
  };
  const three = (seen: readonly Seen[], axis: "x" | "y"): [number, number, number] => [
    at(seen, 0)[axis],
    at(seen, 1)[axis],
    at(seen, 2)[axis],
  ];
  return {
    ax: three(a, "x"),
    ay: three(a, "y"),
    bx: three(b, "x"),
    by: three(b, "y"),
    radiusA: wide(piece.radiusA, fromA),
    radiusB: wide(piece.radiusB, fromB),
    depthA: fromA.depth,
    depthB: fromB.depth,
  };
}

const fallen = (point: Vector, towardsSun: Vector): Vector => ({
  x: point.x - (towardsSun.x / towardsSun.z) * point.z,
  y: point.y - (towardsSun.y / towardsSun.z) * point.z,
  z: 0,
});
