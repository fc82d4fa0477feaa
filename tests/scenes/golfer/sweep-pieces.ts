import type { Tile } from "../noise-tile.ts";
import type { Light } from "../light.ts";
import type { Limb } from "../paint/paint-limb.ts";
import type { Stroke } from "../paint/paint-stroke.ts";
import type { Sweep } from "../paint/sweep.ts";
import { pixelsPerMetre, see, type Seen, type View, type ViewDirection } from "../view.ts";
import type { Vector } from "@overcue/shared-geometry/vector";
import type { Piece } from "./piece.ts";
import { strokeColours } from "./stroke-colours.ts";

/** The same pieces at the moments when the picture's top, middle and bottom row are read. */
export type PiecesInTime = readonly [readonly Piece[], readonly Piece[], readonly Piece[]];

/** Puts pieces into the picture, farthest first. */
export function sweepPieces(pieces: PiecesInTime, view: View, light: Light, cloth: Tile): readonly (Limb | Stroke)[] {
  const [early, middle, late] = pieces;
  const painted: { readonly what: Limb | Stroke; readonly depth: number }[] = [];
  middle.forEach((piece, index) => {
    const first = early[index];
    const last = late[index];
    if (!first || !last) throw new RangeError("sweepPieces: the three moments must hold the same pieces");
    const a = [see(view, first.a), see(view, piece.a), see(view, last.a)] as const;
    const b = [see(view, first.b), see(view, piece.b), see(view, last.b)] as const;
    const sweep = makeSweep(a, b, piece, view);
    const depth = (a[1].depth + b[1].depth) / 2;
    const { material } = piece;
    if (material.make === "soft") {
      const metresPerPixel = 1 / pixelsPerMetre(view, depth);
      painted.push({
        depth,
        what: {
          kind: "limb",
          sweep,
          colour: material.colour,
          texture: { tile: cloth, strength: material.weave, cells: 14, offset: index * 37 },
          metresPerPixel,
        },
      });
    } else {
      const across = strokeColours(material, axisInView(a[1], b[1], view), light);
      painted.push({ depth, what: { kind: "stroke", sweep, across, cover: 1, opaque: true } });
    }
  });
  painted.sort((one, other) => other.depth - one.depth);
  return painted.map(({ what }) => what);
}

/** The sweep of a still thing. */
export function stillSweep(a: Vector, b: Vector, radius: number, view: View): Sweep {
  const from = see(view, a);
  const to = see(view, b);
  return makeSweep([from, from, from], [to, to, to], { radiusA: radius, radiusB: radius }, view);
}

function makeSweep(
  a: readonly [Seen, Seen, Seen],
  b: readonly [Seen, Seen, Seen],
  radius: { readonly radiusA: number; readonly radiusB: number },
  view: View,
): Sweep {
  return {
    ax: [a[0].x, a[1].x, a[2].x],
    ay: [a[0].y, a[1].y, a[2].y],
    bx: [b[0].x, b[1].x, b[2].x],
    by: [b[0].y, b[1].y, b[2].y],
    radiusA: radius.radiusA * pixelsPerMetre(view, a[1].depth),
    radiusB: radius.radiusB * pixelsPerMetre(view, b[1].depth),
    depthA: a[1].depth,
    depthB: b[1].depth,
  };
}

/** The direction from a to b in the camera's axes, up to length. */
function axisInView(a: Seen, b: Seen, view: View): ViewDirection {
  const { principal, focal } = view.camera;
  const back = (seen: Seen): ViewDirection => [
    ((seen.x - principal.x) * seen.depth) / focal,
    ((seen.y - principal.y) * seen.depth) / focal,
    seen.depth,
  ];
  const [from, to] = [back(a), back(b)];
  return [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
}
