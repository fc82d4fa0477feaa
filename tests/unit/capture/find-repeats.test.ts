import { describe, expect, test } from "vitest";
import { findRepeat, startRepeats } from "@overcue/client-capture/picture/find-repeats";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { sceneOf } from "../../scenes/conditions.ts";
import { namedRandom } from "../../scenes/random.ts";
import { renderScene } from "../../scenes/render-scene.ts";

/** A slow rep of a golfer in a small picture, noise and all, 30 a second; going back and coming down from about 1 s on. */
const rep: readonly Picture[] = [...renderScene(sceneOf("small 240x384", 103), 103)].map(({ picture }) => picture);
const swung = rep.slice(30, 90);

function repeatsIn(pictures: readonly Picture[]): boolean[] {
  let state = startRepeats;
  return pictures.map((picture) => {
    const found = findRepeat(state, picture);
    state = found.state;
    return found.output;
  });
}

/** The same picture as another pass through a coder leaves it: every pixel a few levels off. */
function codedAgain(picture: Picture, seed: number): Picture {
  const random = namedRandom(seed, "coded again");
  return { ...picture, luma: picture.luma.map((level) => Math.max(0, Math.min(255, level + 8 * (random() - 0.5)))) };
}

describe("K5.8 pictures of a clip that was stretched to a higher rate", () => {
  test.each([
    { stretched: "twice", times: 2 },
    { stretched: "four times", times: 4 },
  ])("each shown $stretched: all but the first of each is a repeat, once three were seen", ({ times }) => {
    const shown = swung.flatMap((picture, index) =>
      Array.from({ length: times }, (_, time) => (time === 0 ? picture : codedAgain(picture, 10 * index + time))),
    );
    const found = repeatsIn(shown).slice(2 * times + 1);
    expect(found.filter((repeats, index) => repeats !== (index + 1) % times > 0)).toHaveLength(0);
  });

  test("every fourth shown twice, as from 24 to 30 a second: those", () => {
    const shown = swung.flatMap((picture, index) =>
      index % 4 === 3 ? [picture, codedAgain(picture, index)] : [picture],
    );
    expect(repeatsIn(shown).flatMap((repeats, index) => (repeats ? [index % 5] : []))).toStrictEqual(
      Array.from({ length: 15 }, () => 4),
    );
  });

  test("as the camera took them: none while the golfer moves", () => {
    expect(repeatsIn(swung).filter((repeats) => repeats)).toHaveLength(0);
  });

  test("under lamps by which one picture is a tenth brighter than the next: none while the golfer moves", () => {
    const lit = swung.map((picture, index) => ({
      ...picture,
      luma: picture.luma.map((level) => Math.min(255, level * (0.9 + 0.1 * Math.sin(1.7 * index)))),
    }));
    expect(repeatsIn(lit).filter((repeats) => repeats)).toHaveLength(0);
  });

  test("a golfer who stops and stands there: three at most are left out one after the other, and none for long", () => {
    const [last] = swung.slice(-1);
    const held = Array.from({ length: 20 }, (_, index) => (last === undefined ? [] : [codedAgain(last, index)])).flat();
    const found = repeatsIn([...swung, ...held]).slice(swung.length);
    expect(found.slice(0, 4)).toStrictEqual([true, true, true, false]);
    expect(found.slice(7).filter((repeats) => repeats)).toHaveLength(0);
  });

  test("a picture of another size is none", () => {
    const half = swung.slice(-1).map((picture) => ({ ...picture, height: picture.height / 2 }));
    expect(repeatsIn([...swung, ...half]).at(-1)).toBe(false);
  });
});
