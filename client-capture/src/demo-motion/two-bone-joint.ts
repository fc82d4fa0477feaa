import { along, dot, lengthOf, normalise, scale, subtract, type Vector } from "@overcue/shared-geometry/vector";

/**
 * The middle joint of two bones of constant lengths from `root` to `end`, bent towards `towards` (a direction).
 * Where the end is out of reach or too near, the reach is held inside by a hair: `end` then moves along the line.
 * Law of cosines.
 */
export function twoBoneJoint(
  root: Vector,
  wanted: Vector,
  bones: { readonly upper: number; readonly lower: number },
  towards: Vector,
): { readonly joint: Vector; readonly end: Vector } {
  const line = subtract(wanted, root);
  const axis = normalise(line) ?? { x: 0, y: 0, z: -1 };
  const { upper, lower } = bones;
  const most = (upper + lower) * 0.9995;
  const least = Math.abs(upper - lower) + 0.008;
  const reach = Math.min(most, Math.max(least, lengthOf(line)));
  const run = (upper * upper - lower * lower + reach * reach) / (2 * reach);
  const rise = Math.sqrt(Math.max(0, upper * upper - run * run));
  const side = normalise(subtract(towards, scale(axis, dot(towards, axis)))) ?? { x: 0, y: -1, z: 0 };
  return { joint: along(along(root, axis, run), side, rise), end: along(root, axis, reach) };
}
