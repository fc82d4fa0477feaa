import { learnRodColour } from "@overcue/client-capture/shaft/learn-rod-colour";
import { colourCells, ownLikeness } from "@overcue/client-capture/shaft/rod-likeness";
import { pictureFromRgba } from "@overcue/client-capture/picture/picture-from-rgba";
import { imagePoint } from "@overcue/shared-geometry/point";
import { expect, test } from "vitest";
import { drawPicture, seeded } from "./draw-picture.ts";

/** Grass, and a grey mat where x is under `mat`, with an upright rod three pixels wide at x = 40. */
function rodOnGrass(red: number, green: number, blue: number, mat = 0, lawn: readonly number[] = [70, 110, 50]) {
  const size = 80;
  const rgba = new Uint8Array(size * size * 4);
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const rod = Math.abs(x - 40) <= 1;
      rgba.set(rod ? [red, green, blue, 255] : x < mat ? [90, 90, 90, 255] : [...lawn, 255], (y * size + x) * 4);
    }
  }
  return pictureFromRgba(rgba, size, size);
}

test.each([
  ["yellow", 244, 210, 31],
  ["orange", 255, 106, 19],
])("T21 one tap beside a %s rod learns its colour, and grass is not like it", (_, red, green, blue) => {
  const picture = rodOnGrass(red, green, blue);
  const rod = learnRodColour(picture, imagePoint(43.5, 40));
  expect(rod).not.toBeNull();
  if (rod === null || picture.chroma === null) throw new Error("no colour");
  const like = (b: number, r: number): number =>
    rod.likeness[Math.floor((b * colourCells) / 256) * colourCells + Math.floor((r * colourCells) / 256)] ?? -1;
  expect(like(rod.blue, rod.red)).toBeGreaterThan(200);
  expect(like(picture.chroma.blue[0] ?? 0, picture.chroma.red[0] ?? 0)).toBeLessThan(60);
});

test("T22 a rod without a colour of its own, or a grey picture, teaches nothing", () => {
  expect(learnRodColour(rodOnGrass(70, 110, 50), imagePoint(40, 40))).toBeNull();
  expect(learnRodColour(drawPicture(40, 40, 100, [], 0, seeded(1)), imagePoint(20, 20))).toBeNull();
});

test.each([
  [0, [60, 140, 40]],
  [30, [60, 140, 40]],
  [40, [80, 150, 30]],
  [0, [40, 120, 20]],
])("T22 with a mat of %i pixels a lawn of %j is not learned in a white rod's place", (mat, lawn) => {
  expect(learnRodColour(rodOnGrass(240, 240, 236, mat, lawn), imagePoint(40, 40))).toBeNull();
});

test("T54 a colour that hardly differs from what is about it counts less than one that plainly does", () => {
  const plain = learnRodColour(rodOnGrass(255, 106, 19), imagePoint(40, 40));
  const faint = learnRodColour(rodOnGrass(70, 150, 60), imagePoint(40, 40));
  expect(plain).not.toBeNull();
  expect(faint).not.toBeNull();
  if (plain === null || faint === null) return;
  expect(ownLikeness(faint)).toBeLessThan(0.6 * ownLikeness(plain));
});
