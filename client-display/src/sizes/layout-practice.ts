import type { Rect } from "../ground-view/draw-list/shapes.ts";
import type { ScreenSize } from "./viewing-sizes.ts";

export interface PracticeLayout {
  readonly ground: Rect;
  readonly words: Rect;
  readonly side: "left" | "below";
}

/** Width of the widest line beside the ground with its margins, in the key word's font sizes: "shaft level down" at half size. */
export const widestKeyLine = 3.6;

/** Shares the screen between ground and words: beside each other on a wide screen, words below on a tall one. */
export function layoutPractice({ width, height }: ScreenSize, keyWord: number, mustRead: number): PracticeLayout {
  if (width > height) {
    const wordsWidth = Math.round(Math.min(width * 0.58, Math.max(widestKeyLine * keyWord, width * 0.3)));
    return {
      side: "left",
      words: { x: 0, y: 0, width: wordsWidth, height },
      ground: { x: wordsWidth, y: 0, width: width - wordsWidth, height },
    };
  }
  const wordsHeight = Math.round(Math.min(height * 0.6, Math.max(2.15 * keyWord + 2.6 * mustRead + 40, height * 0.25)));
  return {
    side: "below",
    words: { x: 0, y: height - wordsHeight, width, height: wordsHeight },
    ground: { x: 0, y: 0, width, height: height - wordsHeight },
  };
}
