import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { openCamera } from "@overcue/client-capture/frames/camera-source";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { heardOf, joinRelay } from "../../relay/join-relay.ts";
import { startRelay } from "../../relay/start-relay.ts";
import { bundleScript } from "../bundle-script.ts";
import { launchChromium } from "../chromium.ts";
import { deliveredByCamera, keepCameraTrack } from "./camera-track.ts";
import { press, startCamera } from "./phone-views.ts";
import { shortFilm } from "./short-film.ts";

let folder: string;
let browser: Browser;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-count-"));
  browser = await launchChromium({ fakeCamera: await shortFilm(folder, 60) });
}, 300_000);
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true, force: true });
});

/** Pictures that may be on their way between the browser's count and the page's: in the browser, in the queue, in the worker. */
const onTheWay = 5;

test("S15 of a camera at 60 pictures a second a slow reader on a busy page misses many, and each is counted; no more than two wait", async () => {
  const camera = new URL("../../../client-capture/src/frames/camera-source.ts", import.meta.url).pathname;
  const code = await bundleScript({ entry: camera, formats: ["iife"], name: "cameraSource", fileName: "camera" });
  const page = await browser.newPage();
  await keepCameraTrack(page);
  await page.route("https://localhost/page", (route) =>
    route.fulfill({ contentType: "text/html", body: "<p>camera</p>" }),
  );
  await page.goto("https://localhost/page");
  await page.addScriptTag({ content: code });
  const counted = await page.evaluate(async () => {
    const { cameraSource } = globalThis as unknown as { cameraSource: { openCamera: typeof openCamera } };
    const source = await cameraSource.openCamera();
    const { stats } = (globalThis as unknown as { cameraTrack: { stats: { deliveredFrames: number } } }).cameraTrack;
    const { live } = source;
    if (live === undefined) throw new Error("the camera counts nothing");
    const before = stats.deliveredFrames;
    const indices: number[] = [];
    let most = 0;
    for (let taken = 0; taken < 40; taken++) {
      const frame = await source.next();
      if (frame === null) throw new Error("the camera ended");
      frame.image.close();
      indices.push(frame.index);
      most = Math.max(most, live.waiting());
      // A look that takes long, and now and then a page that is busy with something else.
      await new Promise((resolve) => setTimeout(resolve, 50));
      if (taken % 10 === 5) for (const until = performance.now() + 150; performance.now() < until;) most += 0;
    }
    const given = stats.deliveredFrames - before;
    const counts = { given, missed: live.missed(), waiting: live.waiting() };
    source.close();
    return { ...counts, indices, most };
  });
  await page.close();
  const { given, missed, waiting, indices, most } = counted;
  expect(missed).toBeGreaterThan(0);
  expect(most).toBeLessThanOrEqual(2);
  expect(Math.abs(given - (indices.length + missed + waiting))).toBeLessThanOrEqual(onTheWay);
  expect(indices).toEqual([...new Set(indices)].toSorted((a, b) => a - b));
});

test("S15 the phone says of how many of the camera's pictures it looked at how many, and none is left out", async () => {
  const relay = await startRelay();
  const coach = await joinRelay(relay.origin, "coach", { secret: relay.application.secret });
  const context = await browser.newContext({ ignoreHTTPSErrors: true });
  const page = await context.newPage();
  const states = (): CaptureState[] => heardOf(coach, "captureState") as CaptureState[];
  const counted = ({ lookedFrames = 0, missedFrames = 0, failedFrames }: CaptureState): number =>
    lookedFrames + missedFrames + failedFrames;
  const moreStates = async (more: number): Promise<CaptureState> => {
    const before = states().length;
    await expect.poll(() => states().length, { timeout: 60_000 }).toBeGreaterThanOrEqual(before + more);
    return states()[before + more - 1] as CaptureState;
  };
  try {
    await keepCameraTrack(page);
    await page.goto(relay.page("capture"));
    await startCamera(page);
    await press(page, "Read, at: Range");
    await page.getByText("pictures looked at").waitFor({ state: "attached" });
    await expect.poll(() => states().at(-1)?.posesPerSecond ?? 0, { timeout: 120_000 }).toBeGreaterThan(0);
    // Told once a second, and a moment old: two messages later all that had been delivered before is in.
    const shortBy: number[] = [];
    for (let tries = 0; tries < 6; tries++) {
      const delivered = await deliveredByCamera(page);
      const told = await moreStates(2);
      expect(counted(told)).toBeLessThanOrEqual((await deliveredByCamera(page)) + onTheWay);
      expect(told.lookedFrames).toBeGreaterThan(0);
      shortBy.push(delivered - counted(told));
    }
    expect(Math.min(...shortBy)).toBeLessThanOrEqual(onTheWay);
  } finally {
    await context.close();
    coach.socket.close();
    await relay.close();
  }
});
