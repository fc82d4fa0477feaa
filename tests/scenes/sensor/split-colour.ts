import type { Rectangle } from "../canvas.ts";
import type { Planes } from "./planes.ts";

/** ITU-R BT.601, full range, as the product reads its pictures; colour is the mean of each two by two. */
export function splitColour(coded: Float32Array, planes: Planes, within: Rectangle): void {
  const { width, luma, blue, red } = planes;
  const halfWidth = Math.ceil(width / 2);
  for (let row = within.top; row < within.bottom; row++) {
    for (let column = within.left; column < within.right; column++) {
      const at = row * width + column;
      luma[at] = 0.299 * (coded[at * 3] ?? 0) + 0.587 * (coded[at * 3 + 1] ?? 0) + 0.114 * (coded[at * 3 + 2] ?? 0);
    }
  }
  for (let row = within.top; row < within.bottom; row += 2) {
    // The last row and column of an odd picture stand for their neighbours too.
    const down = row + 1 < within.bottom ? width : 0;
    for (let column = within.left; column < within.right; column += 2) {
      const across = column + 1 < within.right ? 1 : 0;
      const first = row * width + column;
      const second = first + across;
      const third = first + down;
      const fourth = third + across;
      const r = (coded[first * 3] ?? 0) + (coded[second * 3] ?? 0) + (coded[third * 3] ?? 0) + (coded[fourth * 3] ?? 0);
      const b =
        (coded[first * 3 + 2] ?? 0) +
        (coded[second * 3 + 2] ?? 0) +
        (coded[third * 3 + 2] ?? 0) +
        (coded[fourth * 3 + 2] ?? 0);
      const y = (luma[first] ?? 0) + (luma[second] ?? 0) + (luma[third] ?? 0) + (luma[fourth] ?? 0);
      const half = (row >> 1) * halfWidth + (column >> 1);
      blue[half] = 128 + (0.564 * (b - y)) / 4;
      red[half] = 128 + (0.713 * (r - y)) / 4;
    }
  }
}
