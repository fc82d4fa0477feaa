import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { worldPoint } from "@overcue/shared-geometry/point";

/**
 * The shaft at an instant between two samples, straight in place and along the shorter arc in direction. The covariance is the larger of the
 * two neighbours', grown by how far the club moves within one standard deviation `sdMs` of the instant.
 * Null where the samples do not enclose the instant or stand more than `mostGap` milliseconds apart.
 */
export function shaftAt(
  samples: readonly { readonly shaft: ShaftInWorld | null }[],
  t: number,
  sdMs: number,
  mostGap = 250,
): ShaftInWorld | null {
  const shafts = samples.flatMap((sample) => (sample.shaft === null ? [] : [sample.shaft]));
  const index = shafts.findIndex((shaft) => shaft.t >= t);
  const after = shafts[index];
  const before = shafts[Math.max(0, index - 1)];
  if (after === undefined || before === undefined || before.t > t || after.t - before.t > mostGap) return null;
  const span = after.t - before.t;
  const share = span > 0 ? (t - before.t) / span : 0;
  const mix = (a: number, b: number): number => a + share * (b - a);
  const direction = {
    x: mix(before.toHead.x, after.toHead.x),
    y: mix(before.toHead.y, after.toHead.y),
    z: mix(before.toHead.z, after.toHead.z),
  };
  const length = Math.hypot(direction.x, direction.y, direction.z);
  if (length < 0.2) return null;
  const larger = trace(before) > trace(after) ? before : after;
  const moved = span > 0 ? sdMs / span : 0;
  const [from, to] = [anglesOf(before.toHead), anglesOf(after.toHead)];
  const rate = [
    after.grip.x - before.grip.x,
    after.grip.y - before.grip.y,
    after.grip.z - before.grip.z,
    turn(from.azimuth, to.azimuth),
    to.elevation - from.elevation,
  ].map((difference) => difference * moved);
  return {
    t: milliseconds(t),
    grip: worldPoint(
      mix(before.grip.x, after.grip.x),
      mix(before.grip.y, after.grip.y),
      mix(before.grip.z, after.grip.z),
    ),
    toHead: { x: direction.x / length, y: direction.y / length, z: direction.z / length },
    covariance: larger.covariance.map(
      (value, place) => value + (rate[Math.floor(place / 5)] ?? 0) * (rate[place % 5] ?? 0),
    ),
  };
}

const turn = (from: number, to: number): number => Math.atan2(Math.sin(to - from), Math.cos(to - from));
const trace = (shaft: ShaftInWorld): number =>
  [0, 6, 12, 18, 24].reduce((sum, k) => sum + (shaft.covariance[k] ?? 0), 0);
