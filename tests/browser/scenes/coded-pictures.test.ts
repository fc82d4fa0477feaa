import { describe, expect, test } from "vitest";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { sceneOf } from "../../scenes/conditions.ts";
import { renderScene, type SceneFrame } from "../../scenes/render-scene.ts";
import { codeAsH264 } from "../../scenes/sensor/code-as-h264.ts";

const scene = sceneOf("small 240x384", 101);
const { width, height } = scene.camera;
const count = 24;

function* firstFrames(): Generator<SceneFrame> {
  for (const frame of renderScene(scene, 101)) {
    if (frame.index >= count) return;
    yield frame;
  }
}

async function coded(bitsPerSecond: number): Promise<SceneFrame[]> {
  const settings = { width, height, framesPerSecond: scene.framesPerSecond, bitsPerSecond };
  const frames: SceneFrame[] = [];
  for await (const frame of codeAsH264(firstFrames(), settings)) frames.push(frame);
  return frames;
}

/** Mean square of the difference in brightness, grey levels squared. */
const difference = (a: Picture, b: Picture): number =>
  a.luma.reduce((sum, value, at) => sum + (value - (b.luma[at] ?? 0)) ** 2, 0) / a.luma.length;

describe("a scene's pictures as a clip", () => {
  test("come back one for one, near to what they were, and the nearer the more bits they may take", async () => {
    const plain = [...firstFrames()];
    const [fine, coarse] = [await coded(2_000_000), await coded(60_000)];
    expect(fine.map(({ t }) => t)).toStrictEqual(plain.map(({ t }) => t));
    const off = (frames: readonly SceneFrame[]): number[] =>
      plain.map(({ picture }, at) => difference(picture, frames[at]?.picture ?? picture));
    // 30 dB of peak signal to noise is a mean square of 65.
    expect(Math.max(...off(fine))).toBeLessThan(65);
    expect(Math.min(...off(fine))).toBeGreaterThan(0);
    const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
    expect(sum(off(coarse))).toBeGreaterThan(2 * sum(off(fine)));
    expect(fine.at(-1)?.picture.chroma?.blue).toHaveLength((width * height) / 4);
  }, 60_000);
});
