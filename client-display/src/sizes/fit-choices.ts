import { metres, pixels, type Metres, type Pixels } from "@overcue/shared-geometry/units";
import { requiredSizes, type ScreenSize, type ViewingSettings } from "./viewing-sizes.ts";

/** Width of the longest choice with its number and margins, height of a choice, and of everything else, in font sizes. */
const widestChoice = 6.75;
const choiceHeight = 1.37;
/** The question takes one line over two columns, two over one. */
const otherHeight = (columns: number): number => (columns === 1 ? 3.7 : 2.7);

export interface ChoiceSizes {
  readonly mustRead: Pixels;
  readonly meetsRule: boolean;
  readonly readableFrom: Metres;
}

/** The size of a list that is chosen from at a distance: in two columns where they fit, shrunk where the screen is too small. */
export function fitChoices({ width, height }: ScreenSize, viewing: ViewingSettings, choices: number): ChoiceSizes {
  const required = requiredSizes(viewing).mustRead;
  const largest = Math.max(...[1, 2].map((columns) => fontFor(columns)));
  return {
    mustRead: pixels(Math.max(15, Math.min(required, largest))),
    meetsRule: largest >= required,
    readableFrom: metres((viewing.distance * largest) / required),
  };

  function fontFor(columns: number): number {
    const rows = Math.ceil(choices / columns);
    return Math.min(width / (columns * widestChoice), height / (rows * choiceHeight + otherHeight(columns)));
  }
}
