import { placeReadAt } from "@overcue/shared-geometry/place-read-at";
import type { Aim } from "@overcue/shared-geometry/wire/practice";
import type { LiveCheckpoint } from "@overcue/shared-geometry/wire/rep";

/** Rising inside the band to be felt, falling outside, level where the measurement cannot tell. */
export interface Tone {
  readonly slide: "rising" | "falling" | "level";
  /** -1 left (beyond the band, away from the golfer), 0 middle, 1 right (towards the heels). */
  readonly pan: -1 | 0 | 1;
}

/** An edge nearer than this many standard errors is too close to call: 1.28 leaves one chance in ten. */
const closeCall = 1.28;

/** The tone for a checkpoint as it is told; null where there is no aim, nothing was read, or an earlier tone is only corrected. */
export function toneOf({ reading, corrects }: LiveCheckpoint, aims: readonly Aim[]): Tone | null {
  const aim = aims.find(({ checkpoint }) => checkpoint === reading.checkpoint);
  if (aim === undefined || corrects) return null;
  const place = placeReadAt(reading.readOuts, reading.checkpoint);
  if (place?.defined !== true) return null;
  const { from, to } = aim.felt;
  const toEdge = Math.min(Math.abs(place.y - from), Math.abs(place.y - to));
  if (toEdge < closeCall * place.sdY) return { slide: "level", pan: 0 };
  if (place.y < from) return { slide: "falling", pan: -1 };
  if (place.y > to) return { slide: "falling", pan: 1 };
  return { slide: "rising", pan: 0 };
}
