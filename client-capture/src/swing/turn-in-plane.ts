import type { Direction } from "@overcue/shared-geometry/world-shaft";
import type { SeriesPoint } from "./fit-crossing.ts";
import type { FollowedSample } from "./follow-swing.ts";

/**
 * The club's turn round the plane it moves in about its top, radians, rising going back. The plane's normal is the mean of the
 * cross products of directions a few samples apart on the way down from `topAt` to `downTo`; fewer than three samples or a club that hardly
 * turned have no plane, and the swing angle stands in for the turn.
 */
export function turnInPlane(samples: readonly FollowedSample[], topAt: number, downTo: number): SeriesPoint[] {
  const seen = samples.flatMap(({ t, shaft, angle, angleSd }) =>
    shaft === null || angle === null ? [] : [{ t, toHead: shaft.toHead, angle, angleSd }],
  );
  const plain = seen.map(({ t, angle, angleSd }) => ({ t, value: angle, sd: angleSd }));
  const down = seen.filter(({ t }) => t >= topAt && t <= downTo).map(({ toHead }) => toHead);
  const normal = meanNormal(down);
  const across = normal === null ? null : inPlaneAxis(normal);
  if (normal === null || across === null) return plain;
  const along = cross(normal, across);
  let previous: number | null = null;
  return seen.map(({ t, toHead, angleSd }) => {
    // The normal points so that coming down turns positively about it; going back is the other way.
    const raw: number = -Math.atan2(dot(toHead, along), dot(toHead, across));
    const value: number =
      previous === null ? raw : previous + Math.atan2(Math.sin(raw - previous), Math.cos(raw - previous));
    previous = value;
    return { t, value, sd: angleSd };
  });
}

function meanNormal(directions: readonly Direction[]): Direction | null {
  const apart = Math.max(1, Math.floor(directions.length / 4));
  let sum: Direction = { x: 0, y: 0, z: 0 };
  for (let index = 0; index + apart < directions.length; index++) {
    const from = directions[index];
    const to = directions[index + apart];
    if (from === undefined || to === undefined) continue;
    const turn = cross(from, to);
    sum = { x: sum.x + turn.x, y: sum.y + turn.y, z: sum.z + turn.z };
  }
  const length = Math.hypot(sum.x, sum.y, sum.z);
  return length < 0.2 ? null : { x: sum.x / length, y: sum.y / length, z: sum.z / length };
}

function inPlaneAxis(normal: Direction): Direction | null {
  const level = cross(normal, { x: 0, y: 0, z: 1 });
  const length = Math.hypot(level.x, level.y, level.z);
  return length < 1e-3 ? null : { x: level.x / length, y: level.y / length, z: level.z / length };
}

const dot = (a: Direction, b: Direction): number => a.x * b.x + a.y * b.y + a.z * b.z;
const cross = (a: Direction, b: Direction): Direction => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
