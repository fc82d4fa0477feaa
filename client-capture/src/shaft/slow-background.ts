import type { WorkPicture } from "./work-picture.ts";

/** What stood in the picture over the last while: an exponential mean of working pictures, and of where the hands were meanwhile. */
export interface SlowBackground {
  width: number;
  height: number;
  values: Float32Array;
  handsX: number;
  handsY: number;
  /** Pictures taken in, so that the mean is a plain one to begin with. */
  count: number;
}

export const emptyBackground = (): SlowBackground => ({
  width: 0,
  height: 0,
  values: new Float32Array(0),
  handsX: 0,
  handsY: 0,
  count: 0,
});

/** Takes a working picture into the mean. Starts anew where the size has changed. Hands in picture pixels. */
export function feedBackground(
  background: SlowBackground,
  picture: WorkPicture,
  handsX: number,
  handsY: number,
  seconds: number,
  timeConstant: number,
): void {
  const { values } = picture;
  if (background.width !== picture.width || background.height !== picture.height) {
    background.width = picture.width;
    background.height = picture.height;
    background.values = new Float32Array(values.length);
    background.count = 0;
  }
  background.count++;
  const share = Math.max(1 - Math.exp(-seconds / timeConstant), 1 / background.count);
  const mean = background.values;
  for (let i = 0; i < values.length; i++) {
    const old = mean[i] as number;
    mean[i] = old + share * ((values[i] as number) - old);
  }
  background.handsX += share * (handsX - background.handsX);
  background.handsY += share * (handsY - background.handsY);
}
