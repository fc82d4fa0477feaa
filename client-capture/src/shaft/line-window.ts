import type { SlowBackground } from "./background-state.ts";
import type { WorkPicture } from "./work-picture.ts";

/**
 * A square cut out of a working picture about the hands, 2 * `half` + 1 on a side, rows `size` apart: brightness in the low 16 bits of each number,
 * the change against what stood there before in the high ones, so that sums of a few pixels sum both. Outside of the picture the nearest pixel
 * of the row or column is repeated and the change is 0.
 */
export interface LineWindow {
  half: number;
  readonly size: number;
  /** Working pixel of the picture at the window's middle, and the picture's size. */
  centreX: number;
  centreY: number;
  pictureWidth: number;
  pictureHeight: number;
  readonly plane: Int32Array;
}

/** Half a window for lines that reach so far out of its middle. */
export const halfWindow = (reach: number): number => Math.ceil(reach) + 8;

/** `half`: the most that will be asked for. */
export function makeLineWindow(half: number): LineWindow {
  const size = 2 * half + 1;
  return {
    half,
    size,
    centreX: 0,
    centreY: 0,
    pictureWidth: 0,
    pictureHeight: 0,
    plane: new Int32Array(size * size),
  };
}

/**
 * Cuts the window out about (`centreX`, `centreY`), as large as lines of `reach` need it. `background` must have the same size as `now`, or be null: then nothing
 * has changed. What the background would also show a fraction of a pixel away (`slack`) is no change: a camera is never known to be still to
 * better than that.
 */
export function cutLineWindow(
  window: LineWindow,
  now: WorkPicture,
  background: SlowBackground | null,
  centreX: number,
  centreY: number,
  reach: number,
  slack: number,
): void {
  const { size, plane } = window;
  const { width, height } = now;
  const half = Math.min((size - 1) / 2, halfWindow(reach));
  const across = 2 * half + 1;
  window.half = half;
  window.centreX = centreX;
  window.centreY = centreY;
  window.pictureWidth = width;
  window.pictureHeight = height;
  const top = Math.max(0, half - centreY);
  const bottom = Math.min(across, half - centreY + height);
  const left = Math.max(0, half - centreX);
  const right = Math.min(across, half - centreX + width);
  if (top >= bottom || left >= right) {
    plane.fill(0);
    return;
  }
  for (let row = top; row < bottom; row++) {
    const start = row * size;
    packRow(now, background, centreY - half + row, centreX - half + left, right - left, slack, plane, start + left);
    if (left > 0) plane.fill(plane[start + left] as number, start, start + left);
    if (right < across) plane.fill(plane[start + right - 1] as number, start + right, start + across);
  }
  for (let row = 0; row < top; row++) plane.copyWithin(row * size, top * size, top * size + across);
  for (let row = bottom; row < across; row++)
    plane.copyWithin(row * size, (bottom - 1) * size, (bottom - 1) * size + across);
}

/** `count` pixels of row `y` from column `x` on. Where nobody knows what lies beside a pixel it shows no change. */
function packRow(
  { width, values }: WorkPicture,
  background: SlowBackground | null,
  y: number,
  x: number,
  count: number,
  slack: number,
  into: Int32Array,
  start: number,
): void {
  const from = y * width + x;
  const known = background !== null && y > background.top && y < background.bottom - 1;
  const first = known ? Math.min(count, Math.max(0, background.left + 1 - x)) : count;
  const last = known ? Math.max(first, Math.min(count, background.right - 1 - x)) : count;
  for (let i = 0; i < first; i++) into[start + i] = values[from + i] as number;
  if (known) packChanges(values, background.aligned, width, from, first, last, Math.round(256 * slack), into, start);
  for (let i = last; i < count; i++) into[start + i] = values[from + i] as number;
}

/** What the background also shows `slack` 256ths of a pixel away is taken off a change. */
function packChanges(
  values: Int16Array,
  old: Int16Array,
  width: number,
  from: number,
  first: number,
  last: number,
  slack: number,
  into: Int32Array,
  start: number,
): void {
  let before = old[from + first - 1] as number;
  let here = old[from + first] as number;
  for (let i = first; i < last; i++) {
    const at = from + i;
    const value = values[at] as number;
    const behind = old[at + 1] as number;
    const change = value - here;
    // By masks: in noise no branch could be foretold.
    const bend = behind - before;
    const rise = (old[at + width] as number) - (old[at - width] as number);
    const bent = (bend ^ (bend >> 31)) - (bend >> 31);
    const risen = (rise ^ (rise >> 31)) - (rise >> 31);
    const minus = change >> 31;
    const beyond = (change ^ minus) - minus - ((slack * (bent + risen)) >> 8);
    into[start + i] = value + ((((beyond & ~(beyond >> 31)) ^ minus) - minus) << 16);
    before = here;
    here = behind;
  }
}
