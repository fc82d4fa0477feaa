import { expect, test } from "vitest";
import { pictureFromPlanes, type Planes } from "@overcue/client-capture/picture/picture-from-planes";

/** 4 by 2 pixels in video range, rows padded to 6 bytes, colour at half size with 3 bytes a row. */
function planes(fullRange: boolean): Planes {
  // prettier-ignore
  const bytes = Uint8Array.from([
    16, 235, 126, 16, 99, 99,
    235, 16, 16, 126, 99, 99,
    128, 240, 99,
    16, 128, 99,
  ]);
  return {
    width: 4,
    height: 2,
    luma: { bytes, offset: 0, stride: 6, step: 1 },
    blue: { bytes, offset: 12, stride: 3, step: 1 },
    red: { bytes, offset: 15, stride: 3, step: 1 },
    fullRange,
  };
}

const rows = (bytes: Uint8Array, width: number): number[][] =>
  Array.from({ length: bytes.length / width }, (_, row) => [...bytes.subarray(row * width, (row + 1) * width)]);

// Ranges: ITU-R BT.601, section 2.5.3 (luma 16 to 235, colour 16 to 240 about 128).
test("F1 video range is widened to 0 to 255, colour about 128, and padding at the rows' ends is left out", () => {
  const picture = pictureFromPlanes(planes(false), 0);
  expect(rows(picture.luma, 4)).toEqual([
    [0, 255, 128, 0],
    [255, 0, 0, 128],
  ]);
  expect([...(picture.chroma?.blue ?? [])]).toEqual([128, 255]);
  // 16 is exactly 0.5 when widened: halves go up.
  expect([...(picture.chroma?.red ?? [])]).toEqual([1, 128]);
});

test("F1 full range is taken as it is", () => {
  expect(rows(pictureFromPlanes(planes(true), 0).luma, 4)).toEqual([
    [16, 235, 126, 16],
    [235, 16, 16, 126],
  ]);
});

test("F2 a turn is clockwise: what was on the left is at the top after a quarter", () => {
  const turned = pictureFromPlanes(planes(true), 90);
  expect([turned.width, turned.height]).toEqual([2, 4]);
  expect(rows(turned.luma, 2)).toEqual([
    [235, 16],
    [16, 235],
    [16, 126],
    [126, 16],
  ]);
  expect([...(turned.chroma?.blue ?? [])]).toEqual([128, 240]);
});

test("F2 two quarters are a half, four are none, and three undo one", () => {
  const half = pictureFromPlanes(planes(true), 180);
  expect(rows(half.luma, 4)).toEqual([
    [126, 16, 16, 235],
    [16, 126, 235, 16],
  ]);
  const three = pictureFromPlanes(planes(true), 270);
  expect(rows(three.luma, 2)).toEqual([
    [16, 126],
    [126, 16],
    [235, 16],
    [16, 235],
  ]);
});

test("F3 interleaved colour is read from every other byte", () => {
  const bytes = Uint8Array.from([1, 2, 3, 4, 10, 20, 30, 40]);
  const picture = pictureFromPlanes(
    {
      width: 4,
      height: 1,
      luma: { bytes, offset: 0, stride: 4, step: 1 },
      blue: { bytes, offset: 4, stride: 4, step: 2 },
      red: { bytes, offset: 5, stride: 4, step: 2 },
      fullRange: true,
    },
    0,
  );
  expect([...(picture.chroma?.blue ?? [])]).toEqual([10, 30]);
  expect([...(picture.chroma?.red ?? [])]).toEqual([20, 40]);
});

test("F3 an odd size has its last colour sample, too", () => {
  const bytes = new Uint8Array(9 + 4 + 4).fill(7);
  const plane = (offset: number, stride: number) => ({ bytes, offset, stride, step: 1 }) as const;
  const picture = pictureFromPlanes(
    { width: 3, height: 3, luma: plane(0, 3), blue: plane(9, 2), red: plane(13, 2), fullRange: true },
    90,
  );
  expect(picture.chroma?.blue).toHaveLength(4);
  expect([...(picture.chroma?.blue ?? [])]).toEqual([7, 7, 7, 7]);
});
