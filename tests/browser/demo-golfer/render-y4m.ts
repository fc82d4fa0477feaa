import { mkdir, open, rename, writeFile } from "node:fs/promises";
import { dirname } from "node:path";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { DemoCheckpoint } from "@overcue/client-capture/demo-motion/demo-truth";
import type { DemoShow } from "./demo-show.ts";
import { playShow } from "./play-show.ts";
import { y4mHeader } from "./y4m-header.ts";
import { openDemoPage } from "./open-demo-page.ts";

export interface RenderedDemo {
  readonly show: DemoShow;
  readonly frames: number;
  readonly camera: Camera;
  /** Milliseconds from the first picture. */
  readonly checkpoints: readonly DemoCheckpoint[];
}

/**
 * Films the demo golfer into an uncompressed Y4M file for Chromium's `--use-file-for-fake-video-capture`, with the truth in
 * `<file>.truth.json`. First and last picture are the same still address, so that the loop has no seam. The file appears when it is whole. `playedAt`: pictures a second for whoever plays it, where that is not the show's own rate.
 */
export async function renderY4m(file: string, show: DemoShow, playedAt = show.framesPerSecond): Promise<RenderedDemo> {
  if (show.width % 2 !== 0 || show.height % 2 !== 0) throw new RangeError("renderY4m: width and height must be even");
  await mkdir(dirname(file), { recursive: true });
  const unfinished = `${file}.part`;
  const out = await open(unfinished, "w");
  const demo = await openDemoPage(async (picture) => {
    await out.write("FRAME\n");
    await out.write(picture);
  });
  try {
    await out.write(y4mHeader(show, playedAt));
    const { camera, frames } = await playShow(demo.page, show);
    const checkpoints = await demo.page.evaluate(() => globalThis.demoPage?.checkpoints() ?? []);
    const rendered = { show, frames, camera, checkpoints };
    await writeFile(`${file}.truth.json`, JSON.stringify(rendered, null, 2));
    await rename(unfinished, file);
    return rendered;
  } finally {
    await demo.close();
    await out.close();
  }
}
