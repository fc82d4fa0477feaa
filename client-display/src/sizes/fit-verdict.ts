import { pixels, type Pixels } from "@overcue/shared-geometry/units";
import { requiredSizes, type ScreenSize, type ViewingSettings } from "./viewing-sizes.ts";

export interface VerdictSizes {
  readonly mustRead: Pixels;
  readonly mark: Pixels;
  readonly meetsRule: boolean;
}

/** How long the texts are, in letters: the sentence's lines, the strip's labels, the count. */
export interface VerdictTexts {
  readonly lines: readonly number[];
  readonly labels: readonly number[];
  readonly count: number;
}

/** Mean advance of the bold typeface's text in font sizes, spaces included: 0.38 measured in Chromium, and a margin for broken words. */
const meanAdvance = 0.42;
const lineHeight = 1.08;
/** Paddings above, below and between, in font sizes. */
const gaps = 1.1;
/** Where there is room, the answer is drawn larger than the rule asks for, up to this much. */
const largestScale = 1.5;

/** The largest sizes with which sentence, strip and count have room, from a little over what the rule asks for downwards, all alike. */
export function fitVerdict(screen: ScreenSize, viewing: ViewingSettings, texts: VerdictTexts): VerdictSizes {
  const required = requiredSizes(viewing);
  let scale = largestScale;
  while (scale > 0.05 && !fits(screen, required.mustRead * scale, required.mark * scale, texts)) scale *= 0.98;
  return {
    mustRead: pixels(Math.max(15, required.mustRead * scale)),
    mark: pixels(Math.max(20, required.mark * scale)),
    meetsRule: scale >= 1,
  };
}

function fits(
  { width, height }: ScreenSize,
  font: number,
  mark: number,
  { lines, labels, count }: VerdictTexts,
): boolean {
  const room = width - 0.9 * font;
  const rows = (letters: number): number => Math.max(1, Math.ceil((letters * meanAdvance * font) / room));
  const textRows = lines.reduce((sum, letters) => sum + rows(letters), 0) + rows(count);
  const items = labels.map((letters) => mark + (letters * meanAdvance + 0.9) * font);
  const stripRows = Math.max(1, Math.ceil(items.reduce((sum, item) => sum + item, 0) / room));
  const widest = Math.max(0, ...items);
  return widest <= room && textRows * font * lineHeight + stripRows * (mark + 0.3 * font) + gaps * font <= height;
}
