import type { Picture } from "../picture/picture.ts";

/** A picture made smaller by a whole factor: means of `factor` by `factor` blocks, in quarters of a grey level. */
export interface WorkPicture {
  width: number;
  height: number;
  factor: number;
  /** width * height values, row-major, 0 to 1020. */
  values: Int16Array;
}

export const emptyWorkPicture = (): WorkPicture => ({ width: 0, height: 0, factor: 1, values: new Int16Array(0) });

/** Fills `into` from the picture's brightness. Its array is kept where the size is the same as last time. */
export function shrinkPicture(picture: Picture, factor: number, into: WorkPicture): void {
  const width = Math.floor(picture.width / factor);
  const height = Math.floor(picture.height / factor);
  if (into.values.length !== width * height) into.values = new Int16Array(width * height);
  into.width = width;
  into.height = height;
  into.factor = factor;
  const { luma, width: stride } = picture;
  const out = into.values;
  if (factor === 1) {
    for (let i = 0; i < out.length; i++) out[i] = (luma[i] as number) << 2;
    return;
  }
  const scale = 4 / (factor * factor);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      let at = y * factor * stride + x * factor;
      for (let row = 0; row < factor; row++) {
        for (let column = 0; column < factor; column++) sum += luma[at + column] as number;
        at += stride;
      }
      out[y * width + x] = sum * scale;
    }
  }
}
