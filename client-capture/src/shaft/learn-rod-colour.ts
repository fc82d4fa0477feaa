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
  const tapX = Math.floor(tap.x / 2);
  const tapY = Math.floor(tap.y / 2);
  const about = placesAbout(picture, tapX, tapY, 4 * tapReach);
  const around = { blue: meanOf(chroma.blue, about), red: meanOf(chroma.red, about) };
  let best = 0;
  let blue = 128;
  let red = 128;
  for (const { x, y, at } of placesAbout(picture, tapX, tapY, tapReach)) {
    const b = chroma.blue[at] as number;
    const r = chroma.red[at] as number;
    const apart = Math.hypot(b - around.blue, r - around.red) - Math.hypot(x - tapX, y - tapY);
    if (apart <= best || ownColour(b - 128, r - 128, around.blue - 128, around.red - 128) < leastColour) continue;
    best = apart;
    blue = b;
    red = r;
  }
  if (best < leastColour) return null;
  const colour = { likeness: likenessTo(blue, red, around.blue, around.red), blue, red };
  const most = Math.max(...colour.likeness);
  const alike = about.filter(({ at }) => 2 * rodLikeness(picture, colour, at) > most).length;
  return alike > mostAlike * about.length ? null : colour;
}

/** How far a colour is from all mixtures of grey and another one, both as steps from grey: at a white rod's edge on a lawn all that is seen is less green. */
function ownColour(blue: number, red: number, otherBlue: number, otherRed: number): number {
  const square = otherBlue * otherBlue + otherRed * otherRed;
  const share = square === 0 ? 0 : Math.max(0, Math.min(1, (blue * otherBlue + red * otherRed) / square));
  return Math.hypot(blue - share * otherBlue, red - share * otherRed);
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly at: number;
}

/** The places of the half-size colour planes up to `reach` from one, row by row. */
function placesAbout(picture: Picture, atX: number, atY: number, reach: number): readonly Place[] {
  const width = Math.ceil(picture.width / 2);
  const height = Math.ceil(picture.height / 2);
  const places: Place[] = [];
  for (let y = Math.max(0, atY - reach); y <= Math.min(height - 1, atY + reach); y++) {
    for (let x = Math.max(0, atX - reach); x <= Math.min(width - 1, atX + reach); x++) {
      places.push({ x, y, at: y * width + x });
    }
  }
  return places;
}

/** 128, no colour, where there are no places. */
const meanOf = (plane: Uint8Array, places: readonly Place[]): number =>
  places.length === 0 ? 128 : places.reduce((sum, { at }) => sum + (plane[at] as number), 0) / places.length;

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
