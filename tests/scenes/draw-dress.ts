import { colourFromHex, type Colour } from "./colour.ts";
import type { Dress } from "./golfer/body-pieces.ts";
import type { Random } from "./random.ts";

/** Clothes and skin drawn by lot: light, dark and bright, long and short. */
export function drawDress(random: Random): Dress {
  const pick = (list: readonly string[]): Colour =>
    colourFromHex(list[Math.floor(random() * list.length)] ?? list[0] ?? "#808080");
  return {
    skin: pick(["#e8b998", "#c98f6b", "#8d5a3b", "#5b3a29"]),
    shirt: pick(["#f2f2ef", "#17181b", "#1f3a68", "#a3262b", "#6f7a80", "#cfd8dc", "#e07f2a"]),
    sleeves: random() < 0.35 ? "long" : "short",
    trousers: pick(["#1c1d22", "#d9d3c3", "#5e6470", "#e8c21c", "#30405c", "#f0efe9"]),
    legs: random() < 0.4 ? "short" : "long",
    shoes: pick(["#f4f4f2", "#24252a", "#8c8f94"]),
    hair: pick(["#1d1612", "#4a3423", "#8a6b42", "#9c9c9c"]),
    cap: random() < 0.5 ? pick(["#f5f5f5", "#16171a", "#26467f"]) : null,
    glove: random() < 0.7 ? pick(["#f6f6f4", "#20242a"]) : null,
  };
}
