import { bundleScript } from "../../browser/bundle-script.ts";
import { launchChromium } from "../../browser/chromium.ts";
import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import { drawSwing } from "./swing-pictures.ts";
import type { TrackerTimes } from "./time-tracker.ts";

/**
 * npm run bench:shaft. What one picture of 720 x 1280 costs the live tracker in a worker of Chromium, and how much the heap grows over
 * 10,000 pictures (in Node, after a collection). Exit code 1 where a goal is missed.
 */
const goals = { p50: 3, p95: 6, heapMegabytes: 1 };

const times = await timeInChromium(1200);
const growth = heapGrowth(10_000);
const lines = [
  `a picture p50 ${times.p50.toFixed(2)} ms (goal ${goals.p50})`,
  `p95 ${times.p95.toFixed(2)} ms (goal ${goals.p95})`,
  `tracked ${(100 * times.trackedShare).toFixed(0)} %`,
  growth === null
    ? "heap not measured: run Node with --expose-gc"
    : `heap ${growth.toFixed(2)} MB over 10,000 pictures`,
];
const met = times.p50 <= goals.p50 && times.p95 <= goals.p95 && growth !== null && growth <= goals.heapMegabytes;
console.log(`bench:shaft: ${lines.join("; ")}; ${met ? "all goals met" : "a goal is MISSED"}`);
process.exitCode = met ? 0 : 1;

async function timeInChromium(frames: number): Promise<TrackerTimes> {
  const code = await bundleScript({
    entry: new URL("time-tracker.worker.ts", import.meta.url).pathname,
    formats: ["es"],
    fileName: "worker",
  });
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    // A page with an origin of its own: a worker from a blob is refused on about:blank.
    await page.route("http://localhost/bench", (route) =>
      route.fulfill({ contentType: "text/html", body: "<p>bench</p>" }),
    );
    await page.goto("http://localhost/bench");
    return await page.evaluate(
      async ([source, count]) => {
        const worker = new Worker(URL.createObjectURL(new Blob([source], { type: "text/javascript" })), {
          type: "module",
        });
        return new Promise<TrackerTimes>((resolve, reject) => {
          worker.onmessage = ({ data }: MessageEvent<TrackerTimes>) => {
            resolve(data);
          };
          worker.onerror = (event) => {
            reject(new Error(event.message));
          };
          worker.postMessage(count);
        });
      },
      [code, frames] as const,
    );
  } finally {
    await browser.close();
  }
}

/** Megabytes that live objects grow by, typed arrays included. Null where the collector cannot be called. */
function heapGrowth(frames: number): number | null {
  if (globalThis.gc === undefined) return null;
  const swing = drawSwing(12);
  let state = startShaftTracker({ handed: "right" });
  let before = 0;
  for (let i = 0; i < frames + 300; i++) {
    const shown = swing[i % swing.length];
    if (shown === undefined) continue;
    const t = milliseconds((i * 1000) / 60);
    state = trackShaft(state, { picture: shown.picture, t, body: { ...shown.body, t } }).state;
    if (i === 299) before = liveBytes();
  }
  return (liveBytes() - before) / 1e6;
}

function liveBytes(): number {
  globalThis.gc?.();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}
