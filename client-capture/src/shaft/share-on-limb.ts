import type { BodyMarks } from "./mark-body.ts";

/**
 * Share of a stretch of line, from `from` to `to` working pixels out of (x, y) at `angle`, on which a limb lies or no farther than `beside` working pixels from it, for a pose is off by as much:
 * what is trusted no more than `level` (0 to 255). x and y are from the middle of the window that was marked. What lies outside of it is no limb.
 */
export function shareOnLimb(
  { size, half, free }: BodyMarks,
  [x, y, angle]: readonly [number, number, number],
  from: number,
  to: number,
  beside: number,
  level: number,
): number {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const isLimb = (along: number, across: number): boolean => {
    const column = Math.round(half + x + along * cos - across * sin);
    const row = Math.round(half + y + along * sin + across * cos);
    const inside = column >= 0 && row >= 0 && column <= 2 * half && row <= 2 * half;
    return inside && (free[row * size + column] as number) <= level;
  };
  let on = 0;
  let count = 0;
  for (let along = from; along <= to; along += 2) {
    count++;
    if (isLimb(along, 0) || isLimb(along, beside) || isLimb(along, -beside)) on++;
  }
  return count === 0 ? 0 : on / count;
}
