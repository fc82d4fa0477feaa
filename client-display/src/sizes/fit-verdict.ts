import { pixels, type Pixels } from "@overcue/shared-geometry/units";
import { requiredSizes, type ScreenSize, type ViewingSettings } from "./viewing-sizes.ts";

export interface VerdictSizes {
  readonly mustRead: Pixels;
  readonly mark: Pixels;
  readonly meetsRule: boolean;
}

/** Mean advance of the typeface's lower-case text in font sizes, spaces included; measured in Chromium, rounded up. */
const meanAdvance = 0.5;
const lineHeight = 1.12;
/** Lines beside the sentence: the strip's labels and the count, with their gaps. */
const otherLines = 3;
/** Each of up to three sentences begins a line of its own and leaves half a line empty. */
const brokenLines = 1.5;

/** Where there is room, the answer is drawn larger than the rule asks for, up to this much. */
const largestScale = 1.5;

/** The largest sizes with which sentence, strip and count have room, from a little over what the rule asks for downwards, all alike. */
export function fitVerdict(
  { width, height }: ScreenSize,
  viewing: ViewingSettings,
  sentenceLength: number,
): VerdictSizes {
  const required = requiredSizes(viewing);
  const fits = (scale: number): boolean => {
    const font = required.mustRead * scale;
    const lines = Math.ceil((sentenceLength * meanAdvance * font) / (width * 0.94) + brokenLines);
    const strip = required.mark * scale * (width > height ? 1 : 2.2);
    return (lines + otherLines) * font * lineHeight + strip <= height * 0.96;
  };
  let scale = largestScale;
  while (scale > 0.05 && !fits(scale)) scale *= 0.98;
  return {
    mustRead: pixels(Math.max(15, required.mustRead * scale)),
    mark: pixels(Math.max(20, required.mark * scale)),
    meetsRule: scale >= 1,
  };
}
