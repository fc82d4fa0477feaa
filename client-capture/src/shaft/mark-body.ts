import { landmarkIndex, type Body } from "../pipeline/body.ts";
import type { LineWindow } from "./line-window.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Where in a square window a line may well be a limb's edge or a sleeve: 255 is free, less is body, 0 is outside of the picture. Laid out as the window's own numbers are. */
export interface BodyMarks {
  readonly size: number;
  /** Half of the window that was marked last, as `LineWindow` has it. */
  half: number;
  readonly free: Uint8Array;
}

export const makeBodyMarks = (size: number): BodyMarks => ({
  size,
  half: (size - 1) / 2,
  free: new Uint8Array(size * size).fill(255),
});

type LimbTrust = "legTrust" | "armTrust" | "bodyTrust";

/**
 * From, to, half width in torso lengths, and how far a line there is trusted. Legs are marked half as wide again as they are: a pose has them centimetres off, and the edge of one
 * that has moved is as new as a shaft.
 */
const limbs: readonly (readonly [number, number, number, LimbTrust])[] = [
  [landmarkIndex.leftShoulder, landmarkIndex.leftHip, 0.2, "bodyTrust"],
  [landmarkIndex.rightShoulder, landmarkIndex.rightHip, 0.2, "bodyTrust"],
  [landmarkIndex.leftShoulder, landmarkIndex.leftElbow, 0.11, "armTrust"],
  [landmarkIndex.rightShoulder, landmarkIndex.rightElbow, 0.11, "armTrust"],
  [landmarkIndex.leftElbow, landmarkIndex.leftWrist, 0.09, "armTrust"],
  [landmarkIndex.rightElbow, landmarkIndex.rightWrist, 0.09, "armTrust"],
  [landmarkIndex.leftHip, landmarkIndex.leftKnee, 0.26, "legTrust"],
  [landmarkIndex.rightHip, landmarkIndex.rightKnee, 0.26, "legTrust"],
  [landmarkIndex.leftKnee, landmarkIndex.leftAnkle, 0.21, "legTrust"],
  [landmarkIndex.rightKnee, landmarkIndex.rightAnkle, 0.21, "legTrust"],
];

/**
 * Marks the limbs of `body` in the window after it was cut out; `factor` picture pixels are a working one, `torso` in working pixels. With a rod (`rodAlong`) a sleeve's edge would
 * count as the butt end's line, so arms are marked wider.
 */
export function markBody(
  marks: BodyMarks,
  body: Body,
  factor: number,
  { half, centreX, centreY, pictureWidth, pictureHeight }: LineWindow,
  torso: number,
  rodAlong: boolean,
  tuning: ShaftTuning,
): void {
  marks.free.fill(255);
  marks.half = half;
  for (const [from, to, width, trust] of limbs) {
    const a = body.landmarks[from];
    const b = body.landmarks[to];
    if (a === undefined || b === undefined) continue;
    const x = a.x / factor - 0.5 - centreX + half;
    const y = a.y / factor - 0.5 - centreY + half;
    const wide = width * torso * (rodAlong && trust === "armTrust" ? tuning.sleeveWithRod : 1);
    markLimb(marks, x, y, (b.x - a.x) / factor, (b.y - a.y) / factor, wide, Math.round(255 * tuning[trust]));
  }
  markOutside(marks, pictureWidth, pictureHeight, centreX - half, centreY - half);
}

function markOutside({ size, free }: BodyMarks, width: number, height: number, left: number, top: number): void {
  for (let row = 0; row < size; row++) {
    const inside = row + top >= 0 && row + top < height;
    const from = inside ? Math.max(0, -left) : size;
    const to = inside ? Math.min(size, width - left) : size;
    if (from > 0) free.fill(0, row * size, row * size + from);
    if (inside && to < size) free.fill(0, row * size + Math.max(0, to), (row + 1) * size);
  }
}

function markLimb(marks: BodyMarks, x: number, y: number, dx: number, dy: number, radius: number, level: number): void {
  const { size, free } = marks;
  const squared = dx * dx + dy * dy;
  const fromRow = Math.max(0, Math.floor(Math.min(y, y + dy) - radius));
  const toRow = Math.min(size - 1, Math.ceil(Math.max(y, y + dy) + radius));
  const fromColumn = Math.max(0, Math.floor(Math.min(x, x + dx) - radius));
  const toColumn = Math.min(size - 1, Math.ceil(Math.max(x, x + dx) + radius));
  const squaredRadius = radius * radius;
  const perSquared = squared > 0 ? 1 / squared : 0;
  for (let row = fromRow; row <= toRow; row++) {
    const py = row - y;
    for (let column = fromColumn; column <= toColumn; column++) {
      const at = row * size + column;
      if ((free[at] as number) <= level) continue;
      const px = column - x;
      const along = (px * dx + py * dy) * perSquared;
      const share = along < 0 ? 0 : along > 1 ? 1 : along;
      const ex = px - share * dx;
      const ey = py - share * dy;
      if (ex * ex + ey * ey < squaredRadius) free[at] = level;
    }
  }
}
