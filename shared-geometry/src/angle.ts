import { radians, type Radians } from "./units.ts";

const turn = 2 * Math.PI;

/** The same direction in (-pi, pi]: -pi itself becomes pi. A value that is not finite comes back as it is. */
export function wrapAngle(angle: Radians): Radians {
  const wrapped = angle - turn * Math.ceil(angle / turn - 0.5);
  return radians(wrapped === -Math.PI ? Math.PI : wrapped);
}

/** Signed turn from `from` to `to` the short way, in (-pi, pi]; exactly opposite directions give pi. */
export function angleBetween(from: Radians, to: Radians): Radians {
  return wrapAngle(radians(to - from));
}
