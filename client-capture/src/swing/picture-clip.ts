import type { SeriesPoint } from "./fit-crossing.ts";
import { handsPath, type HandsMoment } from "./hands-path.ts";
import { headsInPicture, type HeadInPicture } from "./heads-in-picture.ts";
import { median } from "./median.ts";
import type { PictureMoment } from "./picture-moment.ts";

/** A clip whose camera nobody knows, in metres of the golfer's own scale; worked out once for all of its reps. */
export interface PictureClip {
  readonly moments: readonly PictureMoment[];
  /** Pixels to the metre. */
  readonly scale: number;
  readonly path: readonly HandsMoment[];
  readonly heads: readonly HeadInPicture[];
  /** How high the hands are in the picture over the lead shoulder. */
  readonly overShoulder: readonly SeriesPoint[];
}

export function pictureClip(moments: readonly PictureMoment[]): PictureClip {
  const scale = median(moments.map((moment) => moment.scale));
  return {
    moments,
    scale,
    path: handsPath(moments, scale),
    heads: headsInPicture(moments, scale),
    overShoulder: moments.flatMap(({ t, hands, leadShoulder }) =>
      hands === null || leadShoulder === null ? [] : [{ t, value: (leadShoulder.y - hands.y) / scale, sd: 0.03 }],
    ),
  };
}
