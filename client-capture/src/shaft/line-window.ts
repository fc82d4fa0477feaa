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

/** `count` pixels of row `y` from column `x` on. The picture's outermost pixels show no change: nobody knows what lies beside them. */
function packRow(
  { width, height, values }: WorkPicture,
  background: SlowBackground | null,
  y: number,
  x: number,
  count: number,
  slack: number,
  into: Int32Array,
  start: number,
): void {
  const from = y * width + x;
  const old = background === null || y === 0 || y === height - 1 ? null : background.aligned;
  if (old === null) {
    for (let i = 0; i < count; i++) into[start + i] = values[from + i] as number;
    return;
  }
  for (let i = 0; i < count; i++) {
    const value = values[from + i] as number;
    const change = value - (old[from + i] as number);
    // Most pixels change by less than a grey level: noise, and not worth a look at what is about them.
    const packed = change > 3 || change < -3 ? value + (beyond(change, old, from + i, width, slack) << 16) : value;
    into[start + i] = packed;
  }
  if (x === 0) into[start] = values[from] as number;
  if (x + count === width) into[start + count - 1] = values[from + count - 1] as number;
}

/** What is left of a change, whole, when what the background shows `slack` of a pixel away is taken off; 0 where nothing is. */
function beyond(change: number, old: Float32Array, at: number, width: number, slack: number): number {
  const bend = (old[at + 1] as number) - (old[at - 1] as number);
  const rise = (old[at + width] as number) - (old[at - width] as number);
  const allowed = slack * ((bend < 0 ? -bend : bend) + (rise < 0 ? -rise : rise));
  if (change > allowed) return Math.trunc(change - allowed);
  return change < -allowed ? Math.trunc(change + allowed) : 0;
}
