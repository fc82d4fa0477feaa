import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { lowerPart } from "./lower-part.ts";
import type { PictureWindow } from "./station-store.ts";

/** Room about the marks, as a share of their spread, and the smallest part of the picture's width that is shown. */
const room = 0.35;
const leastShare = 0.2;
/** Height over width at least: flatter than that it would leave a part of the screen empty. */
const leastShape = 0.95;

/** The part of a picture about all marks, within the picture; where sticks may lie where there are none. */
export function windowAround(
  sticks: readonly StickInImage[],
  picture: { readonly width: number; readonly height: number },
): PictureWindow {
  const ends = sticks.flatMap(({ near, far }) => [near.at, far.at]);
  if (ends.length === 0) return lowerPart(picture);
  const span = (
    values: readonly number[],
    whole: number,
    shortest = leastShare * picture.width,
  ): readonly [from: number, length: number] => {
    const least = Math.min(...values);
    const most = Math.max(...values);
    const length = Math.min(whole, Math.max(shortest, (most - least) * (1 + 2 * room)));
    const from = (least + most - length) / 2;
    return [Math.min(whole - length, Math.max(0, from)), length];
  };
  const [x, width] = span(
    ends.map((end) => end.x),
    picture.width,
  );
  const [y, height] = span(
    ends.map((end) => end.y),
    picture.height,
    Math.min(picture.height, leastShape * width),
  );
  return { x, y, width, height };
}
