import { alignBackground } from "./align-background.ts";
import type { SlowBackground } from "./background-state.ts";
import type { WorkPicture } from "./work-picture.ts";

export const emptyBackground = (): SlowBackground => ({
  width: 0,
  height: 0,
  values: new Float32Array(0),
  aligned: new Float32Array(0),
  shifted: new Float32Array(0),
  swayX: 0,
  swayY: 0,
  handsX: 0,
  handsY: 0,
  count: 0,
});

/** Share of the picture that the camera may turn away before the background starts anew. */
const farthest = 0.12;

/** Brings the background under the picture of now. False where there is none yet, or the camera has turned too far: it starts anew then. */
export function matchBackground(background: SlowBackground, picture: WorkPicture): boolean {
  const { width, height } = picture;
  if (background.width !== width || background.height !== height) {
    background.width = width;
    background.height = height;
    background.values = new Float32Array(width * height);
    background.shifted = new Float32Array(width * height);
    restart(background);
  }
  if (background.count < 2) return false;
  alignBackground(background, picture);
  const { swayX, swayY } = background;
  if (Math.abs(swayX) > farthest * width || Math.abs(swayY) > farthest * height) {
    restart(background);
    return false;
  }
  background.aligned = background.values;
  if (swayX !== 0 || swayY !== 0) {
    background.aligned = background.shifted;
    shift(background.values, width, height, -swayX, -swayY, background.shifted);
  }
  return true;
}

function restart(background: SlowBackground): void {
  background.count = 0;
  background.swayX = 0;
  background.swayY = 0;
  background.aligned = background.values;
}

/** `into` shows at (x, y) what `from` has at (x + dx, y + dy), bilinear; NaN outside. */
function shift(
  from: Float32Array | Int16Array,
  width: number,
  height: number,
  dx: number,
  dy: number,
  into: Float32Array,
): void {
  const ix = Math.floor(dx);
  const iy = Math.floor(dy);
  const fx = dx - ix;
  const fy = dy - iy;
  const right = fx === 0 ? 0 : 1;
  const down = fy === 0 ? 0 : width;
  for (let y = 0; y < height; y++) {
    const row = y + iy;
    const insideY = row >= 0 && row + (fy === 0 ? 0 : 1) < height;
    for (let x = 0; x < width; x++) {
      const column = x + ix;
      if (!insideY || column < 0 || column + right >= width) {
        into[y * width + x] = Number.NaN;
        continue;
      }
      const at = row * width + column;
      const top = (from[at] as number) * (1 - fx) + (from[at + right] as number) * fx;
      const bottom = (from[at + down] as number) * (1 - fx) + (from[at + down + right] as number) * fx;
      into[y * width + x] = top * (1 - fy) + bottom * fy;
    }
  }
}

/** Takes a working picture into the mean, after `matchBackground`. Hands in picture pixels. */
export function feedBackground(
  background: SlowBackground,
  picture: WorkPicture,
  handsX: number,
  handsY: number,
  seconds: number,
  timeConstant: number,
): void {
  const { width, height, factor } = picture;
  background.count++;
  const share = Math.max(1 - Math.exp(-seconds / timeConstant), 1 / background.count);
  const mean = background.values;
  const { swayX, swayY } = background;
  let now: Float32Array | Int16Array = picture.values;
  if (swayX !== 0 || swayY !== 0) {
    now = background.shifted;
    shift(picture.values, width, height, swayX, swayY, background.shifted);
  }
  // Rows take turns, a half of them a picture, each with twice the share: the mean is slow enough for that.
  const turns = background.count > 3 ? 2 : 1;
  const rowShare = turns === 1 ? share : 1 - (1 - share) * (1 - share);
  for (let y = background.count % turns; y < height; y += turns) {
    const end = (y + 1) * width;
    for (let i = y * width; i < end; i++) {
      const old = mean[i] as number;
      const value = now[i] as number;
      if (value === value) mean[i] = old + rowShare * (value - old);
    }
  }
  background.handsX += share * (handsX - swayX * factor - background.handsX);
  background.handsY += share * (handsY - swayY * factor - background.handsY);
}
