import type { Point } from "@overcue/shared-geometry/point";
import type { Picture } from "../picture/picture.ts";
import { colourCells, rodLikeness, type RodColour } from "./rod-likeness.ts";

/** Pixels about the tap that are looked at, half-size pixels. */
const tapReach = 4;
/** Least distance from grey, from the colour about it, and from all mixtures of the two, that a rod must have to be known by its colour. */
const leastColour = 14;
/** Most of what lies about the tap that may be of the learned colour: a rod is thin, a lawn or a shirt is not. */
const mostAlike = 0.25;

/**
 * Learns the rod's colour from one tap on it. Of the pixels about the tap the one that stands out most from its surroundings in colour counts
 * as the rod. Null where nothing there has a colour of its own (a white rod, a grey picture, a tap beside it) or much of what lies about has it too (the lawn behind a white rod):
 * the tracker then goes by brightness alone, and the screen can say so.
 */
export function learnRodColour(picture: Picture, tap: Point<"image">): RodColour | null {
  const { chroma } = picture;
  if (chroma === null) return null;
  const width = Math.ceil(picture.width / 2);
  const height = Math.ceil(picture.height / 2);
  const tapX = Math.floor(tap.x / 2);
  const tapY = Math.floor(tap.y / 2);
  const around = meanAbout(picture, width, height, tapX, tapY, 4 * tapReach);
  let best = 0;
  let blue = 128;
  let red = 128;
  for (let y = Math.max(0, tapY - tapReach); y <= Math.min(height - 1, tapY + tapReach); y++) {
    for (let x = Math.max(0, tapX - tapReach); x <= Math.min(width - 1, tapX + tapReach); x++) {
      const b = chroma.blue[y * width + x] as number;
      const r = chroma.red[y * width + x] as number;
      const apart = Math.hypot(b - around.blue, r - around.red) - Math.hypot(x - tapX, y - tapY);
      if (apart <= best || ownColour(b - 128, r - 128, around.blue - 128, around.red - 128) < leastColour) continue;
      best = apart;
      blue = b;
      red = r;
    }
  }
  if (best < leastColour) return null;
  const colour = { likeness: likenessTo(blue, red, around.blue, around.red), blue, red };
  return shareAlike(picture, colour, width, height, tapX, tapY, 4 * tapReach) > mostAlike ? null : colour;
}

/** How far a colour is from all mixtures of grey and another one, both as steps from grey: at a white rod's edge on a lawn all that is seen is less green. */
function ownColour(blue: number, red: number, otherBlue: number, otherRed: number): number {
  const square = otherBlue * otherBlue + otherRed * otherRed;
  const share = square === 0 ? 0 : Math.max(0, Math.min(1, (blue * otherBlue + red * otherRed) / square));
  return Math.hypot(blue - share * otherBlue, red - share * otherRed);
}

/** Share of the pixels about a place that are more like the rod than not. */
function shareAlike(
  picture: Picture,
  colour: RodColour,
  width: number,
  height: number,
  atX: number,
  atY: number,
  reach: number,
): number {
  const most = Math.max(...colour.likeness);
  let alike = 0;
  let count = 0;
  for (let y = Math.max(0, atY - reach); y <= Math.min(height - 1, atY + reach); y++) {
    for (let x = Math.max(0, atX - reach); x <= Math.min(width - 1, atX + reach); x++) {
      if (2 * rodLikeness(picture, colour, y * width + x) > most) alike++;
      count++;
    }
  }
  return count === 0 ? 0 : alike / count;
}

function meanAbout(
  { chroma }: Picture,
  width: number,
  height: number,
  atX: number,
  atY: number,
  reach: number,
): { readonly blue: number; readonly red: number } {
  let blue = 0;
  let red = 0;
  let count = 0;
  for (let y = Math.max(0, atY - reach); y <= Math.min(height - 1, atY + reach); y++) {
    for (let x = Math.max(0, atX - reach); x <= Math.min(width - 1, atX + reach); x++) {
      blue += chroma?.blue[y * width + x] ?? 128;
      red += chroma?.red[y * width + x] ?? 128;
      count++;
    }
  }
  return count === 0 ? { blue: 128, red: 128 } : { blue: blue / count, red: red / count };
}

/** How much of the way from the surroundings to the rod is not told from the surroundings' own unevenness. */
const unevenness = 0.2;
/** Likeness of the rod's own colour for each step that it is away from the surroundings': what hardly differs is drowned in noise, and counts little. */
const likenessEach = 2.5;

/**
 * How far a colour lies on the way from the surroundings to the rod, 0 to 255 and the less the nearer those two are: a thin rod's pixels are mixtures of both, and count by their share.
 * Colours off that way count less.
 */
function likenessTo(blue: number, red: number, aroundBlue: number, aroundRed: number): Uint8Array {
  const likeness = new Uint8Array(colourCells * colourCells);
  const alongB = blue - aroundBlue;
  const alongR = red - aroundRed;
  const length = Math.hypot(alongB, alongR);
  const most = Math.min(255, likenessEach * length);
  for (let b = 0; b < colourCells; b++) {
    for (let r = 0; r < colourCells; r++) {
      const db = (b + 0.5) * (256 / colourCells) - aroundBlue;
      const dr = (r + 0.5) * (256 / colourCells) - aroundRed;
      const share = (db * alongB + dr * alongR) / (length * length);
      const aside = Math.abs(db * alongR - dr * alongB) / length;
      const beyond = Math.max(0, Math.min(1, (share - unevenness) / (1 - unevenness)));
      likeness[b * colourCells + r] = Math.round(most * beyond * Math.exp(-0.5 * (aside / (0.35 * length)) ** 2));
    }
  }
  return likeness;
}
