import type { SlowBackground } from "./background-state.ts";
import type { WorkPicture } from "./work-picture.ts";

/**
 * A square cut out of a working picture about the hands, `size` = 2 * `half` + 1 on a side: brightness in the low 16 bits of each number, the change
 * against what stood there before in the high ones, so that sums of a few pixels sum both. Kept again with rows and columns swapped, so that
 * a strip of parallel lines always lies in neighbouring numbers. Outside of the picture the nearest pixel is repeated and the change is 0.
 */
export interface LineWindow {
  readonly half: number;
  readonly size: number;
  /** Working pixel of the picture at the window's middle, and the picture's size. */
  centreX: number;
  centreY: number;
  pictureWidth: number;
  pictureHeight: number;
  readonly plane: Int32Array;
  readonly swapped: Int32Array;
}

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
    swapped: new Int32Array(size * size),
  };
}

/**
 * Cuts the window out about (`centreX`, `centreY`). `background` must have the same size as `now`, or be null: then nothing has changed. What the
 * background would also show a fraction of a pixel away (`slack`) is no change: a camera is never known to be still to better than that.
 */
export function cutLineWindow(
  window: LineWindow,
  now: WorkPicture,
  background: SlowBackground | null,
  centreX: number,
  centreY: number,
  slack: number,
): void {
  const { half, size, plane, swapped } = window;
  const { width, height, values } = now;
  window.centreX = centreX;
  window.centreY = centreY;
  window.pictureWidth = width;
  window.pictureHeight = height;
  const old = background?.aligned ?? null;
  for (let row = 0; row < size; row++) {
    const y = centreY - half + row;
    const line = (y < 0 ? 0 : y >= height ? height - 1 : y) * width;
    const inner = old !== null && y > 0 && y < height - 1;
    for (let column = 0, x = centreX - half; column < size; column++, x++) {
      const at = line + (x < 0 ? 0 : x >= width ? width - 1 : x);
      const value = values[at] as number;
      let packed = value;
      if (inner && x > 0 && x < width - 1) {
        const change = value - (old[at] as number);
        // Most pixels change by less than a grey level: noise, and not worth a look at what is about them.
        if (change > 3 || change < -3) packed += beyond(change, old, at, width, slack) << 16;
      }
      plane[row * size + column] = packed;
      swapped[column * size + row] = packed;
    }
  }
}

/** What is left of a change, whole, when what the background shows `slack` of a pixel away is taken off; 0 where nothing is. */
function beyond(change: number, old: Float32Array, at: number, width: number, slack: number): number {
  const bend = (old[at + 1] as number) - (old[at - 1] as number);
  const rise = (old[at + width] as number) - (old[at - width] as number);
  const allowed = slack * ((bend < 0 ? -bend : bend) + (rise < 0 ? -rise : rise));
  if (change > allowed) return Math.trunc(change - allowed);
  return change < -allowed ? Math.trunc(change + allowed) : 0;
}
