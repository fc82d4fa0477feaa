import type { Point } from "@overcue/shared-geometry/point";
import type { Picture } from "../picture/picture.ts";

/** A practice rod's colour as the camera sees it, as how much each Cb, Cr counts as rod: 64 * 64 values, 0 to 255, Cb-major. */
export interface RodColour {
  readonly likeness: Uint8Array;
  /** Cb and Cr of the rod itself, 128 = no colour. */
  readonly blue: number;
  readonly red: number;
}

export const colourCells = 64;
/** Pixels about the tap that are looked at, half-size pixels. */
const tapReach = 4;
/** Least distance from grey, and from the colour about it, that a rod must have to be known by its colour. */
const leastColour = 14;

/**
 * Learns the rod's colour from one tap on it. Of the pixels about the tap the one that stands out most from its surroundings in colour counts
 * as the rod. Null where nothing there has a colour of its own (a white rod, a grey picture, a tap beside it): the tracker then goes by
 * brightness alone, and the screen can say so.
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
      if (apart <= best || Math.hypot(b - 128, r - 128) < leastColour) continue;
      best = apart;
      blue = b;
      red = r;
    }
  }
  return best < leastColour ? null : { likeness: likenessTo(blue, red, around.blue, around.red), blue, red };
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

/**
 * How far a colour lies on the way from the surroundings to the rod, 0 to 255: a thin rod's pixels are mixtures of both, and count by their share.
 * Colours off that way count less.
 */
function likenessTo(blue: number, red: number, aroundBlue: number, aroundRed: number): Uint8Array {
  const likeness = new Uint8Array(colourCells * colourCells);
  const alongB = blue - aroundBlue;
  const alongR = red - aroundRed;
  const length = Math.hypot(alongB, alongR);
  for (let b = 0; b < colourCells; b++) {
    for (let r = 0; r < colourCells; r++) {
      const db = (b + 0.5) * (256 / colourCells) - aroundBlue;
      const dr = (r + 0.5) * (256 / colourCells) - aroundRed;
      const share = (db * alongB + dr * alongR) / (length * length);
      const aside = Math.abs(db * alongR - dr * alongB) / length;
      const inside = Math.max(0, Math.min(1, share)) * Math.exp(-0.5 * (aside / (0.35 * length)) ** 2);
      likeness[b * colourCells + r] = Math.round(255 * inside);
    }
  }
  return likeness;
}
