import type { StationInput } from "./station-fit.ts";
import type { StationRefusal } from "./station-verdict.ts";

/** Sticks shorter than this share of the picture's height are no line to measure by. */
const leastShareOfHeight = 0.0125;

/** What can be said against a station before anything is solved; null where there is nothing. */
export function checkStation({ sticks, settings, height, ball }: StationInput): StationRefusal | null {
  const lines = new Set(sticks.map((stick) => stick.line));
  if (lines.size < 2 || lines.size < sticks.length || !lines.has("ball-line")) return "too-few-sticks";
  const { toeLine, heelLine, stickLength } = settings;
  if (!(toeLine > 0.1 && heelLine > toeLine && heelLine < 3 && stickLength > 0.2 && stickLength < 3)) {
    return "distances-not-in-order";
  }
  const places = [...sticks.flatMap(({ near, far }) => [near.at, far.at]), ...(ball ? [ball.at] : [])];
  if (!places.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))) return "not-a-place";
  const lengths = sticks.map(({ near, far }) => Math.hypot(far.at.x - near.at.x, far.at.y - near.at.y));
  return lengths.some((length) => length < leastShareOfHeight * height) ? "too-short" : null;
}
