import { metres, pixels, type Metres } from "@overcue/shared-geometry/units";
import { widestKeyLine } from "./layout-practice.ts";
import { requiredSizes, type ScreenSize, type ViewingSettings, type ViewingSizes } from "./viewing-sizes.ts";

const keyLines = 2;
/** Lines that must be read beside the key word, each half its size. */
const otherLines = 3;
const lineHeight = 1.08;
/** In the long direction of the screen the words leave the ground at least this share. */
const groundShare = 0.42;

export interface FittedSizes extends ViewingSizes {
  /** False where the screen is too small for the set distance; the words are then as large as they go. */
  readonly meetsRule: boolean;
  /** The farthest from which this screen can be read by the rule. */
  readonly readableFrom: Metres;
}

/** The required sizes, or the largest that leave the ground its room, all shrunk alike. */
export function fitSizes(screen: ScreenSize, viewing: ViewingSettings): FittedSizes {
  const required = requiredSizes(viewing);
  const largest = largestKeyWord(screen);
  const shrink = Math.min(1, largest / required.keyWord);
  // Never so small that a person beside the screen cannot read it.
  const floor = 15;
  return {
    keyWord: pixels(Math.max(2 * floor, required.keyWord * shrink)),
    mustRead: pixels(Math.max(floor, required.mustRead * shrink)),
    mark: pixels(Math.max(floor, required.mark * shrink)),
    meetsRule: shrink === 1,
    readableFrom: metres((viewing.distance * largest) / required.keyWord),
  };
}

function largestKeyWord({ width, height }: ScreenSize): number {
  const wide = width > height;
  const wordWidth = wide ? width * (1 - groundShare) : width;
  const wordHeight = wide ? height : height * (1 - groundShare);
  return Math.min(wordWidth / widestKeyLine, wordHeight / ((keyLines + otherLines / 2) * lineHeight));
}
