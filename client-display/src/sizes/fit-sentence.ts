import { pixels, type Pixels } from "@overcue/shared-geometry/units";
import { requiredSizes, type ScreenSize, type ViewingSettings } from "./viewing-sizes.ts";

/** Mean advance of the bold typeface in font sizes, with a margin for broken lines, and what a line and the padding take. */
const meanAdvance = 0.44;
const lineHeight = 1.15;
const padding = 0.8;
/** Smaller is not even read from beside the screen. */
const smallest = 18;

/** The font of a sentence over the whole width: as the rule asks for, shrunk where it would take more than `share` of the height. */
export function fitSentence(
  { width, height }: ScreenSize,
  viewing: ViewingSettings,
  letters: number,
  share: number,
): Pixels {
  let font: number = requiredSizes(viewing).mustRead;
  while (font > smallest) {
    const lines = Math.ceil((letters * meanAdvance * font) / Math.max(font, width - 2 * padding * font));
    if ((lines * lineHeight + padding) * font <= share * height) break;
    font *= 0.97;
  }
  return pixels(Math.max(smallest, font));
}
