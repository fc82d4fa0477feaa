import { readFile, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import type { DemoTruth } from "@overcue/client-capture/demo-motion/demo-truth";
import { usualShow, type DemoShow } from "./demo-show.ts";
import { openDemoPage, type OpenDemoPage } from "./open-demo-page.ts";
import { renderY4m } from "./render-y4m.ts";

const scratch = join(import.meta.dirname, "../../../build/demo-golfer-test.y4m");

interface Shown {
  readonly pixels: Buffer;
  readonly truth: DemoTruth | null;
  readonly captureTime: number;
  readonly index: number;
}

let demo: OpenDemoPage;
beforeAll(async () => {
  demo = await openDemoPage(() => undefined);
});
afterAll(async () => {
  await demo.close();
});

async function show(wanted: DemoShow, pictures: number): Promise<{ camera: Camera; shown: Shown[] }> {
  const { camera } = await demo.page.evaluate((what) => {
    if (!globalThis.demoPage) throw new Error("the page has not loaded");
    return globalThis.demoPage.open(what);
  }, wanted);
  const shown: Shown[] = [];
  for (let k = 0; k < pictures; k++) {
    const got = await demo.page.evaluate(async () => {
      const frame = await globalThis.demoPage?.next();
      return frame ? { ...frame, pixels: globalThis.demoPage?.pixels() ?? "" } : null;
    });
    if (got) shown.push({ ...got, pixels: Buffer.from(got.pixels, "base64") });
  }
  return { camera, shown };
}

/**
 * How far beside the truth the drawn shaft lies, pixels: the middle of what the club changed in the picture, across the shaft,
 * at one place along it. Any plain change counts the same, or the lit side of the shaft would pull. Null where the club changed next to nothing there (hidden, out of the picture).
 */
function missAcross(camera: Camera, truth: DemoTruth, share: number, withClub: Buffer, without: Buffer): number | null {
  const { grip, head } = truth;
  const at = worldPoint(
    grip.x + share * (head.x - grip.x),
    grip.y + share * (head.y - grip.y),
    grip.z + share * (head.z - grip.z),
  );
  const middle = project(camera, at);
  if (!middle) return null;
  const across = { x: -Math.sin(truth.angleInPicture), y: Math.cos(truth.angleInPicture) };
  let weight = 0;
  let sum = 0;
  for (let row = Math.floor(middle.y) - 6; row <= middle.y + 6; row++) {
    for (let column = Math.floor(middle.x) - 6; column <= middle.x + 6; column++) {
      const dx = column + 0.5 - middle.x;
      const dy = row + 0.5 - middle.y;
      const beside = dx * across.x + dy * across.y;
      const along = dx * across.y - dy * across.x;
      if (Math.abs(along) > 3 || Math.abs(beside) > 5) continue;
      const byte = 4 * (row * camera.width + column);
      const change = Math.max(...[0, 1, 2].map((c) => Math.abs((withClub[byte + c] ?? 0) - (without[byte + c] ?? 0))));
      if (change < 8) continue;
      const counts = Math.min(20, change);
      weight += counts;
      sum += counts * beside;
    }
  }
  return weight > 300 ? sum / weight : null;
}

describe("demo golfer in the browser", () => {
  it.each(["right", "left"] as const)(
    "G1 draws the club where the geometry projects it, within a tenth of a pixel in the mean and half a pixel at most (%s-handed)",
    async (handed) => {
      const wanted: DemoShow = { ...usualShow, handed, camera: "demo", framesPerSecond: 1, width: 720, height: 1280 };
      const { camera, shown } = await show(wanted, 8);
      const { shown: bare } = await show({ ...wanted, club: false }, 8);
      const misses: number[] = [];
      shown.forEach(({ truth, pixels }, k) => {
        const without = bare[k];
        if (!truth || !without) return;
        const length = Math.hypot(
          truth.headInPicture.x - truth.gripInPicture.x,
          truth.headInPicture.y - truth.gripInPicture.y,
        );
        // Seen nearly end-on, the blade lies over the shaft.
        if (length < 60) return;
        for (const share of [0.35, 0.5, 0.65, 0.8]) {
          const miss = missAcross(camera, truth, share, pixels, without.pixels);
          if (miss !== null) misses.push(miss);
        }
      });
      expect(misses.length).toBeGreaterThan(20);
      expect(Math.abs(misses.reduce((sum, miss) => sum + miss, 0) / misses.length)).toBeLessThan(0.1);
      expect(Math.max(...misses.map(Math.abs))).toBeLessThan(0.5);
    },
  );

  it("G2 gives every picture once and in order, with its time, its truth and then an end", async () => {
    const { shown } = await show({ ...usualShow, framesPerSecond: 1, width: 180, height: 320, tempo: "tour" }, 40);
    expect(shown.length).toBeGreaterThan(4);
    expect(shown.length).toBeLessThan(40);
    expect(shown.map((frame) => frame.index)).toEqual(shown.map((_, k) => k));
    for (const frame of shown) {
      expect(frame.captureTime).toBeCloseTo(frame.index * 1000, 6);
      expect(frame.truth?.t).toBeCloseTo(frame.captureTime, 6);
    }
  });

  it("G3 films into a Y4M file of whole frames with the truth beside it", async () => {
    const rendered = await renderY4m(scratch, {
      ...usualShow,
      width: 180,
      height: 320,
      framesPerSecond: 5,
      tempo: "tour",
    });
    const head = "YUV4MPEG2 W180 H320 F5:1 Ip A1:1 C420jpeg\n";
    const { size } = await stat(scratch);
    expect(size).toBe(head.length + rendered.frames * ("FRAME\n".length + 180 * 320 * 1.5));
    const bytes = await readFile(scratch);
    expect(bytes.subarray(0, head.length).toString()).toBe(head);
    const places = rendered.checkpoints.map((point) => point.checkpoint);
    expect(places).toContain("arm-level-back");
    expect(places).toContain("arm-level-down");
    // A picture of sky above and lawn below: bright and blue over green.
    const first = bytes.subarray(head.length + "FRAME\n".length);
    const chroma = 180 * 320;
    expect(first[10] ?? 0).toBeGreaterThan(120);
    expect(first[chroma + 5] ?? 0).toBeGreaterThan(132);
    expect(first[chroma + 90 * 150 + 45] ?? 255).toBeLessThan(120);
    await rm(scratch);
    await rm(`${scratch}.truth.json`);
  });
});
