/** What the device allows, milliseconds. */
export interface ExposureRange {
  readonly least: number;
  readonly most: number;
}

/** 1/1000 s: a shaft at 700 degrees a second then blurs over 0.7 degrees. Milliseconds. */
export const wantedExposure = 1;
/** Longer than this a slow rehearsal's shaft blurs over more than 3.5 degrees: rather a dark picture, and a word about it. Milliseconds. */
const longest = 17;

/** Mean brightness, 0 to 255: under the first the exposure is lengthened, over the second shortened again. Apart, so that it comes to rest. */
const tooDark = 70;
const tooBright = 160;
const stepBy = 1.5;

/**
 * The exposure for the next second, milliseconds: as short as it may be for a moving shaft, but no shorter than the light allows. Null where it stays
 * as it is.
 */
export function nextExposure(brightness: number, now: number, { least, most }: ExposureRange): number | null {
  const within = (time: number): number => Math.min(most, longest, Math.max(least, time));
  if (brightness < tooDark) return changed(now, within(now * stepBy));
  if (brightness > tooBright) return changed(now, within(Math.max(wantedExposure, now / stepBy)));
  return null;
}

const changed = (now: number, next: number): number | null => (Math.abs(next - now) < 0.01 * now ? null : next);
