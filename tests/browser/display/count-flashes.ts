/** Relative luminance (0 to 1) of a coarse picture of the screen, row-major, and when it was taken, milliseconds. */
export interface LuminanceFrame {
  readonly at: number;
  readonly cells: readonly number[];
}

/** A change counts from this much on, where the darker side is below 0.8 (WCAG 2.2, general flash). */
const change = 0.1;
const darkerBelow = 0.8;

/**
 * The most flashes in any one second that a quarter or more of the screen shared, after the general flash threshold of
 * WCAG 2.2 (a flash is a pair of opposing changes of relative luminance). A quarter of the screen is smaller than the
 * quarter of ten degrees that WCAG allows to flash, at any distance from which the words are sized, so this is the
 * stricter count.
 */
export function countFlashes(frames: readonly LuminanceFrame[], share = 0.25): number {
  const cellCount = frames[0]?.cells.length ?? 0;
  const turns = Array.from({ length: cellCount }, (_, cell) => turnsOf(frames, cell));
  let worst = 0;
  for (const { at } of frames) {
    const flashes = turns
      .map((times) => Math.floor(times.filter((time) => time > at - 1000 && time <= at).length / 2))
      .toSorted((a, b) => b - a);
    worst = Math.max(worst, flashes[Math.ceil(cellCount * share) - 1] ?? 0);
  }
  return worst;
}

/** When a cell's luminance changed over in either direction. */
function turnsOf(frames: readonly LuminanceFrame[], cell: number): readonly number[] {
  const times: number[] = [];
  let extreme = frames[0]?.cells[cell] ?? 0;
  let rising: boolean | null = null;
  for (const { at, cells } of frames) {
    const now = cells[cell] ?? 0;
    const moved = Math.abs(now - extreme) >= change && Math.min(now, extreme) < darkerBelow;
    const direction = now > extreme;
    if (moved && direction !== rising) {
      times.push(at);
      rising = direction;
      extreme = now;
    } else if (rising === null ? false : direction === rising) extreme = now;
  }
  return times;
}
