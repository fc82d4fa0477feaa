import { imagePoint, type Point } from "./point.ts";
import type { Pixels } from "./units.ts";

/** A place in the picture seen in a mirror: the same height, the other side. */
export const mirrorPoint = (point: Point<"image">, width: Pixels): Point<"image"> =>
  imagePoint(width - point.x, point.y);
