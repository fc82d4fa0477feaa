import type { PictureMoment } from "./picture-moment.ts";

/** A place in the picture in metres of the golfer's own scale, right and down. */
export interface PlaceInPicture {
  readonly t: number;
  readonly x: number;
  readonly y: number;
}

/** The club head, and the direction of the shaft that leads to it. */
export interface HeadInPicture extends PlaceInPicture {
  readonly angle: number;
}

/** The club head wherever it was seen. */
export function headsInPicture(moments: readonly PictureMoment[], scale: number): HeadInPicture[] {
  return moments.flatMap(({ t, shaft }) =>
    shaft === null || shaft.head === null
      ? []
      : [{ t, x: shaft.head.x / scale, y: shaft.head.y / scale, angle: shaft.angle }],
  );
}
