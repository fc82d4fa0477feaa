import type { Vector } from "@overcue/shared-geometry/vector";
import type { Colour } from "../colour.ts";

/** What a piece is made of. `weave` is how strongly cloth or skin varies; thin things are painted as exact strokes. */
export type Material =
  | { readonly make: "soft"; readonly colour: Colour; readonly weave: number }
  | { readonly make: "steel" | "graphite" | "rubber" | "paint"; readonly colour: Colour };

/** A tapered round piece of body or club in the world, metres. */
export interface Piece {
  readonly a: Vector;
  readonly b: Vector;
  readonly radiusA: number;
  readonly radiusB: number;
  readonly material: Material;
}

/** The point a share of the way from a to b. */
export const between = (a: Vector, b: Vector, share: number): Vector => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
  z: a.z + (b.z - a.z) * share,
});
