import { alignBackground } from "./align-background.ts";
import type { SlowBackground, Turned } from "./background-state.ts";
import { shiftRow, type RowSpan } from "./shift-row.ts";
import type { WorkPicture } from "./work-picture.ts";

export const emptyBackground = (): SlowBackground => ({
  width: 0,
  height: 0,
  values: new Float32Array(0),
  rounded: new Int16Array(0),
  aligned: new Int16Array(0),
  shifted: new Int16Array(0),
  left: 0,
  top: 0,
  right: 0,
  bottom: 0,
  swayX: 0,
  swayY: 0,
  turnedX: 0,
  turnedY: 0,
  factor: 1,
  handsX: 0,
  handsY: 0,
  count: 0,
});

/** Share of the picture that the camera may turn away before the background starts anew. */
const farthest = 0.12;
const span: RowSpan = { from: 0, to: 0 };

/** Brings the background under the picture of now. False where there is none yet, or the camera has turned too far: it starts anew then. */
export function matchBackground(background: SlowBackground, picture: WorkPicture): boolean {
  const { width, height, factor } = picture;
  if (background.width !== width || background.height !== height) {
    background.width = width;
    background.height = height;
    background.values = new Float32Array(width * height);
    background.rounded = new Int16Array(width * height);
    background.shifted = new Int16Array(width * height);
    restart(background);
  }
  background.factor = factor;
  if (background.count < 2) return false;
  alignBackground(background, picture);
  const { swayX, swayY } = background;
  if (Math.abs(swayX) > farthest * width || Math.abs(swayY) > farthest * height) {
    restart(background);
    return false;
  }
  bring(background);
  return true;
}

/** Off by what a sway is off by at each beginning anew. */
export const turnedSinceStart = (background: SlowBackground): Turned => ({
  x: background.turnedX + background.swayX * background.factor,
  y: background.turnedY + background.swayY * background.factor,
});

function restart(background: SlowBackground): void {
  ({ x: background.turnedX, y: background.turnedY } = turnedSinceStart(background));
  background.count = 0;
  background.swayX = 0;
  background.swayY = 0;
}

function bring(background: SlowBackground): void {
  const { width, height, rounded, shifted, swayX, swayY } = background;
  background.left = 0;
  background.top = 0;
  background.right = width;
  background.bottom = height;
  background.aligned = rounded;
  if (swayX === 0 && swayY === 0) return;
  background.aligned = shifted;
  background.top = height;
  background.bottom = 0;
  for (let y = 0; y < height; y++) {
    shiftRow(rounded, width, height, y, -swayX, -swayY, shifted, y * width, span);
    if (span.to <= span.from) continue;
    background.left = span.from;
    background.right = span.to;
    background.top = Math.min(background.top, y);
    background.bottom = y + 1;
  }
}

let row = new Int16Array(0);

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
  const { swayX, swayY, values, rounded } = background;
  const still = swayX === 0 && swayY === 0;
  if (row.length !== width) row = new Int16Array(width);
  // Rows take turns, a half of them a picture, each with twice the share: the mean is slow enough for that.
  const turns = background.count > 3 ? 2 : 1;
  const rowShare = turns === 1 ? share : 1 - (1 - share) * (1 - share);
  for (let y = background.count % turns; y < height; y += turns) {
    if (still) {
      feedRow(picture.values, y * width, values, rounded, y * width, width, rowShare);
      continue;
    }
    shiftRow(picture.values, width, height, y, swayX, swayY, row, 0, span);
    feedRow(row, span.from, values, rounded, y * width + span.from, span.to - span.from, rowShare);
  }
  background.handsX += share * (handsX - swayX * factor - background.handsX);
  background.handsY += share * (handsY - swayY * factor - background.handsY);
}

function feedRow(
  now: Int16Array,
  from: number,
  mean: Float32Array,
  rounded: Int16Array,
  at: number,
  count: number,
  share: number,
): void {
  for (let i = 0; i < count; i++) {
    const old = mean[at + i] as number;
    const value = old + share * ((now[from + i] as number) - old);
    mean[at + i] = value;
    rounded[at + i] = value + 0.5;
  }
}
