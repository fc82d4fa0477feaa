import type { Vector } from "@overcue/shared-geometry/vector";
import type { Colour } from "../colour.ts";
import type { Far } from "./paint-far.ts";
import type { Ground, Mat } from "./paint-ground.ts";
import type { Wall } from "./paint-wall.ts";
import type { BackdropChoice } from "./photographs.ts";

/** A still straight thing of the surroundings: post, rope, fence wire, net cord, stick. World, metres. */
export interface Bar {
  readonly from: Vector;
  readonly to: Vector;
  readonly radius: number;
  readonly colour: Colour;
  /** 1 hides what is behind; a net's cord less. */
  readonly cover: number;
}

export type PlaceName = "tee" | "range" | "busy" | "room" | "bay" | "photograph";

/** Where the golfer stands: all that keeps still. */
export interface Place {
  readonly behind:
    | { readonly kind: "far"; readonly far: Far }
    | { readonly kind: "wall"; readonly wall: Wall }
    /** The whole picture, the ground in it too. */
    | { readonly kind: "photograph"; readonly choice: BackdropChoice };
  readonly ground: Ground;
  readonly mat: Mat | null;
  readonly bars: readonly Bar[];
}
