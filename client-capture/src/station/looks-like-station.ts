import { usualFocalPerShortSide } from "@overcue/shared-geometry/default-camera";
import { lineDistance } from "@overcue/shared-geometry/station-model";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import type { Picture } from "../picture/picture.ts";

/** What a phone on a tripod behind a golfer can look like; each wide enough for a careless set-up. */
const limits = {
  /** Vanishing point off the picture's middle, in focal lengths. */
  sideways: 0.3,
  upDown: 0.35,
  /** Lens height, metres. */
  lowest: 0.35,
  highest: 2,
  /** A line's miss of the others' vanishing point, in shares of its distance to it. */
  missShare: 0.12,
  /** Stick length seen over stick length stated. */
  shortest: 0.6,
  longest: 1.6,
} as const;

/**
 * Whether sticks could be those of a station, by arithmetic alone: they meet in one vanishing point near the middle of the picture, their distances from each
 * other stand in the stated proportion, and lens height and stick lengths that follow are possible. Saves solving for chance lines.
 */
export function looksLikeStation(
  sticks: readonly StickInImage[],
  settings: StationSettings,
  { width, height }: Pick<Picture, "width" | "height">,
  focal: number = usualFocalPerShortSide * Math.min(width, height),
): boolean {
  const [ball, ...others] = sticks;
  if (!ball || others.length === 0) return false;
  const last = others[others.length - 1];
  const vanishing = last && meet(ball, last);
  if (!vanishing) return false;
  if (Math.abs(vanishing.x - width / 2) > limits.sideways * focal) return false;
  if (Math.abs(vanishing.y - height / 2) > limits.upDown * focal) return false;
  const row = Math.max(...sticks.map(({ near }) => near.at.y));
  const below = row - vanishing.y;
  if (!(below > 10)) return false;
  // On one row of the picture all lines are seen at one depth: the spacing gives the scale, the scale the lens height.
  const sign = settings.handed === "right" ? -1 : 1;
  const heights = others.map((stick) => {
    const spacing = sign * (columnAt(stick, row) - columnAt(ball, row));
    return (lineDistance(stick.line, settings) * below) / spacing;
  });
  if (!heights.every((lens) => lens > limits.lowest && lens < limits.highest)) return false;
  if (Math.max(...heights) > 1.25 * Math.min(...heights)) return false;
  const lens = heights.reduce((sum, value) => sum + value, 0) / heights.length;
  return sticks.every((stick) => {
    const off = columnAt(stick, vanishing.y) - vanishing.x;
    if (Math.abs(off) > limits.missShare * below) return false;
    const depth = (y: number): number => (focal * lens) / (y - vanishing.y);
    const share = (depth(stick.far.at.y) - depth(stick.near.at.y)) / settings.stickLength;
    // Seen up to where something covers it a stick may look shorter, never longer: a shaft that points up ends nowhere on the ground.
    const isWhole = stick.near.isEnd && stick.far.isEnd;
    return share > (isWhole ? limits.shortest : 0) && share < limits.longest;
  });
}

/** Where a stick's line crosses a row. */
function columnAt({ near, far }: StickInImage, row: number): number {
  const share = (row - near.at.y) / (far.at.y - near.at.y);
  return near.at.x + share * (far.at.x - near.at.x);
}

function meet(a: StickInImage, b: StickInImage): { x: number; y: number } | null {
  const ax = a.far.at.x - a.near.at.x;
  const ay = a.far.at.y - a.near.at.y;
  const bx = b.far.at.x - b.near.at.x;
  const by = b.far.at.y - b.near.at.y;
  const cross = ax * by - ay * bx;
  if (Math.abs(cross) < 1e-6 * Math.hypot(ax, ay) * Math.hypot(bx, by)) return null;
  const along = ((b.near.at.x - a.near.at.x) * by - (b.near.at.y - a.near.at.y) * bx) / cross;
  return { x: a.near.at.x + along * ax, y: a.near.at.y + along * ay };
}
