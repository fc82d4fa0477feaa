import { expect, test } from "vitest";
import { emptyWorkPicture, shrinkPicture } from "@overcue/client-capture/shaft/work-picture";
import { seeded } from "./draw-picture.ts";

const noise = (width: number, height: number, from = 0): Uint8Array => {
  const random = seeded(4);
  return new Uint8Array(width * height + from).map(() => 256 * random()).subarray(from);
};

test.each([
  ["rows of whole twelves", 36, 0],
  ["an odd width", 35, 0],
  ["bytes that begin in the middle of a number", 36, 1],
])("a working pixel is four times the mean of its block: %s", (_, width, from) => {
  const height = 26;
  const luma = noise(width, height, from);
  for (const factor of [1, 2, 3, 4, 5]) {
    const work = emptyWorkPicture();
    shrinkPicture({ width, height, luma, chroma: null }, factor, work, null, 0);
    expect([work.width, work.height]).toStrictEqual([Math.floor(width / factor), Math.floor(height / factor)]);
    const means = [...work.values].map((_value, i) => {
      const [x, y] = [(i % work.width) * factor, Math.floor(i / work.width) * factor];
      let sum = 0;
      for (let row = 0; row < factor; row++) {
        for (let column = 0; column < factor; column++) sum += luma[(y + row) * width + x + column] ?? 0;
      }
      return Math.floor((4 * sum) / factor ** 2 + 1e-9);
    });
    expect([...work.values]).toStrictEqual(means);
  }
});
