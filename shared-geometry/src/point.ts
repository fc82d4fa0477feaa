/**
 * Points that carry their space in the type. Only the camera changes a point's space.
 *
 * - `image`: pixels of the upright picture, x right, y down, origin at the outer corner of the top left pixel
 *   (the centre of that pixel is 0.5, 0.5).
 * - `ground`: metres on the ground plane, the world's x and y.
 * - `world`: metres; origin at the ball, x along the target line towards the target, y from the ball line towards the
 *   golfer's heels, z up.
 */
declare const space: unique symbol;

export type Space = "image" | "ground" | "world";

export type Point<S extends Space> = (S extends "world"
  ? { readonly x: number; readonly y: number; readonly z: number }
  : { readonly x: number; readonly y: number }) & { readonly [space]?: S };

export const imagePoint = (x: number, y: number): Point<"image"> => ({ x, y });
export const groundPoint = (x: number, y: number): Point<"ground"> => ({ x, y });
export const worldPoint = (x: number, y: number, z: number): Point<"world"> => ({ x, y, z });
