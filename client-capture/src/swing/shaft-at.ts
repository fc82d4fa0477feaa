import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { worldPoint } from "@overcue/shared-geometry/point";

/** The shaft's place and direction between two samples, without a covariance. */
type Between = Pick<ShaftInWorld, "grip" | "toHead">;

/** Gauss-Hermite rule of three points: the outer two lie so many standard deviations away and weigh a sixth each. */
const outerPoint = Math.sqrt(3);
const outerWeight = 1 / 6;

/** The samples on either side of an instant. */
interface Neighbours {
  readonly before: ShaftInWorld;
  readonly after: ShaftInWorld;
}

/**
 * The shaft at an instant between two samples, straight in place and along the shorter arc in direction. The covariance is the larger of the
 * two neighbours', grown by where the club was earlier and later within the instant's standard deviation `sdMs` (the three points of a Gauss-Hermite rule), over gaps and up to the samples'
 * ends: a place that stands still for just that moment is still not known where it hurries before and after, or where nobody knows how it went on.
 * Null where the samples do not enclose the instant or stand more than `mostGap` milliseconds apart.
 */
export function shaftAt(
  samples: readonly { readonly shaft: ShaftInWorld | null }[],
  t: number,
  sdMs: number,
  mostGap = 250,
): ShaftInWorld | null {
  const shafts = samples.flatMap((sample) => (sample.shaft === null ? [] : [sample.shaft]));
  const around = neighboursOf(shafts, t, mostGap);
  const here = around === null ? null : between(around, t);
  if (around === null || here === null) return null;
  const { before, after } = around;
  const larger = trace(before) > trace(after) ? before : after;
  const span = after.t - before.t;
  const moves = [-outerPoint * sdMs, outerPoint * sdMs].map((by) => {
    const there = placeBeside(shafts, t + by);
    if (there !== null) return difference(here, there);
    const carriedOn = difference(before, after).map((change) => (span > 0 ? (change * by) / span : 0));
    const end = by < 0 ? shafts[0] : shafts[shafts.length - 1];
    if (end === undefined || Math.abs(by) <= mostGap) return carriedOn;
    const toEnd = difference(here, end);
    return Math.hypot(...carriedOn) > Math.hypot(...toEnd) ? carriedOn : toEnd;
  });
  return {
    t: milliseconds(t),
    ...here,
    covariance: larger.covariance.map((value, place) => {
      const [row, column] = [Math.floor(place / 5), place % 5];
      return value + outerWeight * moves.reduce((sum, move) => sum + (move[row] ?? 0) * (move[column] ?? 0), 0);
    }),
  };
}

/** Where the club was about an instant, however far apart the samples stand; turned about within a gap it is where the later sample has it. Null beyond the samples. */
function placeBeside(shafts: readonly ShaftInWorld[], t: number): Between | null {
  const around = neighboursOf(shafts, t, Infinity);
  return around && (between(around, t) ?? around.after);
}

function neighboursOf(shafts: readonly ShaftInWorld[], t: number, mostGap: number): Neighbours | null {
  const index = shafts.findIndex((shaft) => shaft.t >= t);
  const after = shafts[index];
  const before = shafts[Math.max(0, index - 1)];
  if (after === undefined || before === undefined || before.t > t || after.t - before.t > mostGap) return null;
  return { before, after };
}

function between({ before, after }: Neighbours, t: number): Between | null {
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
  const [a, b] = [before.grip, after.grip];
  return {
    grip: worldPoint(mix(a.x, b.x), mix(a.y, b.y), mix(a.z, b.z)),
    toHead: { x: direction.x / length, y: direction.y / length, z: direction.z / length },
  };
}

/** From one shaft to another in the order of the covariance: grip x, y, z, azimuth, elevation. */
function difference(from: Between, to: Between): readonly number[] {
  const [a, b] = [anglesOf(from.toHead), anglesOf(to.toHead)];
  const azimuth = b.azimuth - a.azimuth;
  return [
    to.grip.x - from.grip.x,
    to.grip.y - from.grip.y,
    to.grip.z - from.grip.z,
    Math.atan2(Math.sin(azimuth), Math.cos(azimuth)),
    b.elevation - a.elevation,
  ];
}

const trace = (shaft: ShaftInWorld): number =>
  [0, 6, 12, 18, 24].reduce((sum, k) => sum + (shaft.covariance[k] ?? 0), 0);
