import { leanStep } from "./lean-node.ts";
import { unrestAt } from "./swing-pace.ts";

/** A turn from one direction to a second: where a third lies if it goes on evenly, and how far it may be off. */
export interface EvenTurn {
  x: number;
  y: number;
  z: number;
  /** Variance a direction, square radians. */
  variance: number;
}

const cell = (leanStep * leanStep) / 12;

/**
 * Goes on from direction `b` as it came from `a`, for `next` seconds after `before` (great circle at constant rate). The turn is disturbed by accelerations
 * that grow with the pace (rad/s; or its own rate, if faster), as the filter has them; what the cells of the three directions blur is added.
 */
export function goOn(
  into: EvenTurn,
  a: Float64Array,
  i: number,
  b: Float64Array,
  j: number,
  before: number,
  next: number,
  pace: number,
): void {
  const [ax, ay, az] = [a[3 * i] ?? 0, a[3 * i + 1] ?? 0, a[3 * i + 2] ?? 0];
  const [bx, by, bz] = [b[3 * j] ?? 0, b[3 * j + 1] ?? 0, b[3 * j + 2] ?? 0];
  const angle = Math.acos(Math.min(1, Math.max(-1, ax * bx + ay * by + az * bz)));
  const ratio = next / before;
  const on = Math.min(ratio * angle, Math.PI);
  const sine = Math.sin(angle);
  const p = sine > 1e-3 ? Math.sin(angle + on) / sine : 1 + ratio;
  const q = sine > 1e-3 ? Math.sin(on) / sine : ratio;
  into.x = p * bx - q * ax;
  into.y = p * by - q * ay;
  into.z = p * bz - q * az;
  const density = unrestAt({ turn: Math.max(pace, angle / before), hands: 0 }).turn;
  const grown = (density * next * next * (before + next)) / 3 + cell * (1 + ratio * ratio + (1 + ratio) ** 2);
  into.variance = Math.min(mostVariance, grown);
}

/** Beyond this a third direction is as good as unforeseen, square radians. */
const mostVariance = 1.5;

/** How likely each third direction is: bell-shaped with the tails of Student's t with 4 degrees of freedom in a plane. Golfers stop and turn round. */
export function oddsAfter(into: Float64Array, { x, y, z, variance }: EvenTurn, directions: Float64Array): void {
  const share = 1 / (2 * variance);
  for (let k = 0; k < into.length; k++) {
    const along = x * (directions[3 * k] ?? 0) + y * (directions[3 * k + 1] ?? 0) + z * (directions[3 * k + 2] ?? 0);
    const tail = 1 + (1 - along) * share;
    into[k] = 1 / (variance * tail * tail * tail);
  }
}
