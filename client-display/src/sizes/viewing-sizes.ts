import type { Metres, Pixels } from "@overcue/shared-geometry/units";
import { pixels } from "@overcue/shared-geometry/units";

/**
 * How large things must be drawn to be read from where the golfer stands.
 * Rule: the key word and the marks subtend 40 arc minutes or more, anything else that must be read 20 or more.
 * ISO 9241-3 (as quoted by IBM) prefers 20 to 22 for a character's height; twice that for the key word is our own
 * choice for sunlight.
 */
export const keyWordArcMinutes = 40;
export const mustReadArcMinutes = 20;

/** Height of a capital of Barlow Semi Condensed as a share of its font size (the font's OS/2 table: 700 of 1000 units). */
export const capitalShare = 0.7;

/** CSS defines 96 pixels to the inch; only a screen held against a ruler says what that is in millimetres. */
export const assumedPixelsPerMillimetre = 96 / 25.4;

/** CSS pixels. */
export interface ScreenSize {
  readonly width: number;
  readonly height: number;
}

export interface ViewingSettings {
  /** Eye to screen. */
  readonly distance: Metres;
  /** CSS pixels to a millimetre of this screen. */
  readonly pixelsPerMillimetre: number;
}

/** Font sizes for text, a plain size for marks. */
export interface ViewingSizes {
  readonly keyWord: Pixels;
  readonly mustRead: Pixels;
  readonly mark: Pixels;
}

/** Height on the screen that subtends `arcMinutes` at the set distance. */
export function heightOfAngle(arcMinutes: number, { distance, pixelsPerMillimetre }: ViewingSettings): Pixels {
  const millimetresHigh = 2 * distance * 1000 * Math.tan(((arcMinutes / 60 / 2) * Math.PI) / 180);
  return pixels(millimetresHigh * pixelsPerMillimetre);
}

/** Arc minutes that a height on the screen subtends at the set distance. */
export function angleOfHeight(height: Pixels, { distance, pixelsPerMillimetre }: ViewingSettings): number {
  return ((2 * Math.atan(height / pixelsPerMillimetre / (2 * distance * 1000)) * 180) / Math.PI) * 60;
}

/** The sizes that the rule asks for, whether or not the screen has room for them. */
export function requiredSizes(viewing: ViewingSettings): ViewingSizes {
  return {
    keyWord: pixels(heightOfAngle(keyWordArcMinutes, viewing) / capitalShare),
    mustRead: pixels(heightOfAngle(mustReadArcMinutes, viewing) / capitalShare),
    mark: heightOfAngle(keyWordArcMinutes, viewing),
  };
}
