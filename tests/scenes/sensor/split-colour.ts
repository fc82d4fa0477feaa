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
    for (let column = within.left; column < within.right; column += 2) {
      let r = 0;
      let b = 0;
      let y = 0;
      let count = 0;
      for (let down = row; down < Math.min(row + 2, within.bottom); down++) {
        for (let across = column; across < Math.min(column + 2, within.right); across++) {
          const at = down * width + across;
          r += coded[at * 3] ?? 0;
          b += coded[at * 3 + 2] ?? 0;
          y += luma[at] ?? 0;
          count++;
        }
      }
      const half = (row >> 1) * halfWidth + (column >> 1);
      blue[half] = 128 + (0.564 * (b - y)) / count;
      red[half] = 128 + (0.713 * (r - y)) / count;
    }
  }
}
