import type { PictureMoment } from "./picture-moment.ts";

/** A place in the picture in metres of the golfer's own scale, right and down. */
export interface PlaceInPicture {
  readonly t: number;
  readonly x: number;
  readonly y: number;
}

/** The club head wherever it was seen. */
export function headsInPicture(moments: readonly PictureMoment[], scale: number): PlaceInPicture[] {
  return moments.flatMap(({ t, shaft }) =>
    shaft === null || shaft.head === null ? [] : [{ t, x: shaft.head.x / scale, y: shaft.head.y / scale }],
  );
}
