import type { SlowBackground } from "./background-state.ts";
import type { WorkPicture } from "./work-picture.ts";

/**
 * A square cut out of a working picture about the hands, `size` = 2 * `half` + 1 on a side, with the change against what stood there before, and
 * both again with rows and columns swapped, so that a strip of parallel lines always lies in neighbouring numbers.
 * Outside of the picture the nearest pixel is repeated and the change is 0.
 */
export interface LineWindow {
  readonly half: number;
  readonly size: number;
  /** Working pixel of the picture at the window's middle. */
  centreX: number;
  centreY: number;
  readonly now: Int16Array;
  readonly nowSwapped: Int16Array;
  readonly change: Int16Array;
  readonly changeSwapped: Int16Array;
}

export function makeLineWindow(half: number): LineWindow {
  const size = 2 * half + 1;
  const plane = (): Int16Array => new Int16Array(size * size);
  return {
    half,
    size,
    centreX: 0,
    centreY: 0,
    now: plane(),
    nowSwapped: plane(),
    change: plane(),
    changeSwapped: plane(),
  };
}

/** Cuts the window out about (`centreX`, `centreY`). `background` must have the same size as `now`, or be null: then
 * nothing has changed. */
export function cutLineWindow(
  window: LineWindow,
  now: WorkPicture,
  background: SlowBackground | null,
  centreX: number,
  centreY: number,
): void {
  const { half, size } = window;
  const { width, height, values } = now;
  const old = background?.aligned ?? values;
  window.centreX = centreX;
  window.centreY = centreY;
  for (let row = 0; row < size; row++) {
    const y = centreY - half + row;
    const insideY = y >= 0 && y < height;
    const line = (y < 0 ? 0 : y >= height ? height - 1 : y) * width;
    for (let column = 0; column < size; column++) {
      const x = centreX - half + column;
      const inside = insideY && x >= 0 && x < width;
      const at = line + (x < 0 ? 0 : x >= width ? width - 1 : x);
      const value = values[at] as number;
      const before = old[at] as number;
      const change = inside && before === before ? value - before : 0;
      window.now[row * size + column] = value;
      window.change[row * size + column] = change;
      window.nowSwapped[column * size + row] = value;
      window.changeSwapped[column * size + row] = change;
    }
  }
}
