import type { ScreenSize } from "./viewing-sizes.ts";

/** A letter's mean advance in font sizes, a line's height, and what a name in the key takes beside its letters. */
const meanAdvance = 0.42;
const lineHeight = 1.15;
const keyMark = 1.6;

/** How high a plot may be so that title, picture and key stand on one sheet; never under a third of it. CSS pixels. */
export function plotHeight(
  { width, height }: ScreenSize,
  fontSize: number,
  texts: { readonly title: string; readonly series: readonly { readonly label: string }[] },
): number {
  const room = width - fontSize;
  const linesOf = (letters: number, more = 0): number =>
    Math.max(1, Math.ceil(((letters * meanAdvance + more) * fontSize) / room));
  const keyWidths = texts.series.map(({ label }) => (label.length * meanAdvance + keyMark) * fontSize);
  const keyLines = Math.max(
    1,
    keyWidths.reduce<{ lines: number; used: number }>(
      ({ lines, used }, next) => (used + next > room ? { lines: lines + 1, used: next } : { lines, used: used + next }),
      { lines: 1, used: 0 },
    ).lines,
  );
  const words = (linesOf(texts.title.length) + keyLines) * lineHeight * fontSize;
  return Math.max(height / 3, height - words - 1.1 * fontSize);
}
