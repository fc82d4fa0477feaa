import type { GroundFrame } from "./ground-frame.ts";
import type { MarkShape, ScreenPoint, Shape } from "./shapes.ts";
import { within } from "./within.ts";

/** Which way a place lies that the view has no room for, as the golfer would say it. */
export type OutsideWord =
  "farther out" | "farther back" | "to the target" | "from the target" | "out" | "back" | "ahead" | "behind";

/**
 * The word that stands beside the triangle of a place outside the view, so that the point is never just gone. `at` is
 * where the triangle stands; the word stays whole inside the view.
 */
export function tagOutside(
  frame: GroundFrame,
  place: { readonly x: number; readonly y: number },
  { at, outside }: { readonly at: ScreenPoint; readonly outside: MarkShape },
  sizes: { readonly mark: number; readonly text: number },
): Shape {
  const { area } = frame;
  const long = outsideWord(frame, place, outside);
  // Half a tag's height and width with their paddings, and a gap to the triangle.
  const halfHeight = sizes.text * 0.52;
  const halfWidthOf = (text: OutsideWord): number => sizes.text * ((text.length / 2) * meanAdvance + 0.3);
  const gap = sizes.text * 0.15;
  const towardsMiddle = at.x > area.x + area.width / 2 ? -1 : 1;
  const besideOf = (text: OutsideWord): number => at.x + towardsMiddle * (sizes.mark / 2 + gap + halfWidthOf(text));
  const fits = (text: OutsideWord): boolean =>
    besideOf(text) - halfWidthOf(text) >= area.x && besideOf(text) + halfWidthOf(text) <= area.x + area.width;
  // Beside the triangle, in one word where there is no room for two; else in the next row at the end where WANT does not stand.
  const isTooWide = 2 * halfWidthOf(long) > area.width;
  const text = fits(long) ? long : ((isTooWide ? shortestWord : shortWord)[long] ?? long);
  const halfWidth = halfWidthOf(text);
  const beside = besideOf(text);
  const fitsBeside = fits(text);
  const inwards = at.y > area.y + area.height / 2 ? -1 : 1;
  const centre = fitsBeside
    ? { x: beside, y: at.y }
    : { x: area.x + halfWidth + gap, y: at.y + inwards * (sizes.mark / 2 + gap + halfHeight) };
  return {
    kind: "tag",
    text,
    at: {
      x: within(centre.x, area.x + halfWidth, area.x + area.width - halfWidth),
      y: within(centre.y, area.y + halfHeight, area.y + area.height - halfHeight),
    },
    align: "centre",
    size: sizes.text,
    ink: "ink",
    ground: "paper",
    alpha: 1,
  };
}

const shortWord: Readonly<Partial<Record<OutsideWord, OutsideWord>>> = {
  "farther out": "out",
  "farther back": "back",
};

/** Where the whole view is narrower than the words. */
const shortestWord: Readonly<Partial<Record<OutsideWord, OutsideWord>>> = {
  ...shortWord,
  "to the target": "ahead",
  "from the target": "behind",
};

/** The bold typeface's mean advance in font sizes as measured in Chromium, and a little. */
const meanAdvance = 0.44;

function outsideWord(
  frame: GroundFrame,
  { x, y }: { readonly x: number; readonly y: number },
  outside: MarkShape,
): OutsideWord {
  const upOrDown = outside === "triangle-up" || outside === "triangle-down";
  const acrossBands = (frame.bands === "rows") === upOrDown;
  if (acrossBands) return y < (frame.farthest + frame.nearest) / 2 ? "farther out" : "farther back";
  return x > 0 ? "to the target" : "from the target";
}
