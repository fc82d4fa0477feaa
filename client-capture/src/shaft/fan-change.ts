import type { WorkPicture } from "./work-picture.ts";

/**
 * What has come into the picture since both of the two before it: working pixels taken two by two, quarters of a grey level, 0 where nothing has. What stood there in
 * either of them, and what went away, is not in it.
 */
export interface FanChange {
  width: number;
  height: number;
  values: Int16Array;
  /** The last three pictures, the newest first. */
  readonly pictures: HalvedPicture[];
  count: number;
}

interface HalvedPicture {
  values: Int16Array;
  /** How far the camera had turned away from where it looked at first, in these pixels. */
  swayX: number;
  swayY: number;
}

/** Share of a picture's own slope from one pixel to the next but one that is no change: a camera is never known to be still to better than a fraction of a pixel. */
const slopeShare = 0.15;

export const emptyFanChange = (): FanChange => ({
  width: 0,
  height: 0,
  values: new Int16Array(0),
  pictures: [0, 1, 2].map(() => ({ values: new Int16Array(0), swayX: 0, swayY: 0 })),
  count: 0,
});

/** Takes the next picture in; sway in working pixels. The comparison itself is `compareChange`'s. */
export function feedChange(change: FanChange, picture: WorkPicture, swayX: number, swayY: number): void {
  const width = picture.width >> 1;
  const height = picture.height >> 1;
  if (change.width !== width || change.height !== height) {
    change.width = width;
    change.height = height;
    change.values = new Int16Array(width * height);
    for (const each of change.pictures) each.values = new Int16Array(width * height);
    change.count = 0;
  }
  const newest = change.pictures.pop();
  if (newest === undefined) return;
  change.pictures.unshift(newest);
  newest.swayX = swayX / 2;
  newest.swayY = swayY / 2;
  halve(picture, newest.values, width, height);
  change.count++;
}

function halve({ values, width: stride }: WorkPicture, into: Int16Array, width: number, height: number): void {
  for (let y = 0; y < height; y++) {
    let a = 2 * y * stride;
    for (let x = y * width; x < (y + 1) * width; x++, a += 2) {
      const above = (values[a] as number) + (values[a + 1] as number);
      into[x] = (above + (values[a + stride] as number) + (values[a + stride + 1] as number)) >> 2;
    }
  }
}

/** Fills `values`: the smaller of the changes against the two pictures before where both have one sign. False while two before it are not known. */
export function compareChange({ width, height, values, pictures, count }: FanChange): boolean {
  const [now, last, older] = pictures;
  if (count < 3 || now === undefined || last === undefined || older === undefined) return false;
  values.fill(0);
  const [lastX, lastY] = [Math.round(last.swayX - now.swayX), Math.round(last.swayY - now.swayY)];
  const [olderX, olderY] = [Math.round(older.swayX - now.swayX), Math.round(older.swayY - now.swayY)];
  const toLast = lastY * width + lastX;
  const toOlder = olderY * width + olderX;
  const edge = 1 + Math.max(...[lastX, lastY, olderX, olderY].map(Math.abs));
  const seen = now.values;
  for (let y = edge; y < height - edge; y++) {
    for (let at = y * width + edge; at < (y + 1) * width - edge; at++) {
      const value = seen[at] as number;
      const since = value - (last.values[at + toLast] as number);
      const before = value - (older.values[at + toOlder] as number);
      if (since > 0 !== before > 0) continue;
      const across = Math.abs((seen[at + 1] as number) - (seen[at - 1] as number));
      const along = Math.abs((seen[at + width] as number) - (seen[at - width] as number));
      const size = Math.min(Math.abs(since), Math.abs(before)) - slopeShare * (across + along);
      if (size > 0) values[at] = since > 0 ? size : -size;
    }
  }
  return true;
}
