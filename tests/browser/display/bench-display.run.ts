import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { openPractice } from "./open-practice.ts";
import { builtPages } from "./pages-folder.ts";

/**
 * How fast the practice view paints with 60 estimates a second: paints a second and script time a paint, beside the
 * goals. Exit code 1 where one is missed. The relay, the pages and the browser share this machine.
 */
const seconds = 8;
const goals = { paintsPerSecond: 58, scriptP95: 4 };
const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
];

const browser = await launchChromium();
let missed = 0;
try {
  for (const viewport of sizes) {
    const relay = await startScriptedRelay({ pages: builtPages() });
    const page = await browser.newPage({ viewport });
    const practice = await openPractice(page, relay);
    const before = (await practice.paintTimes()).length;
    const commitsBefore = await practice.commits();
    const began = performance.now();
    const told = await sayAtSixty(practice);
    const lasted = (performance.now() - began) / 1000;
    const times = (await practice.paintTimes()).slice(before);
    const commits = (await practice.commits()) - commitsBefore;
    const p95 = quantile(times, 0.95);
    const rate = times.length / lasted;
    const ok = p95 <= goals.scriptP95 && rate >= goals.paintsPerSecond;
    if (!ok) missed++;
    console.log(
      [
        `${viewport.width} x ${viewport.height}`,
        `${(told / lasted).toFixed(1)} estimates/s`,
        `${rate.toFixed(1)} paints/s (goal ${goals.paintsPerSecond})`,
        `script a paint p50 ${quantile(times, 0.5).toFixed(2)} ms, p95 ${p95.toFixed(2)} ms (goal ${goals.scriptP95})`,
        `${commits} React commits`,
        ok ? "met" : "MISSED",
      ].join("; "),
    );
    await page.close();
    await relay.close();
  }
} finally {
  await browser.close();
}
console.log(
  missed === 0 ? "bench:display: all goals met" : `bench:display: ${missed} of ${sizes.length} sizes missed a goal`,
);
process.exitCode = missed === 0 ? 0 : 1;

/** Tells estimates by the clock, so that a slow timer does not lower the rate. */
async function sayAtSixty(practice: Awaited<ReturnType<typeof openPractice>>): Promise<number> {
  const start = performance.now();
  let told = 0;
  while (performance.now() - start < seconds * 1000) {
    const due = Math.floor(((performance.now() - start) * 60) / 1000);
    const now = performance.now() - start;
    await practice.sayEstimates(due - told, 0, () => now);
    told = due;
    await new Promise((resolve) => setTimeout(resolve, 4));
  }
  return told;
}

function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}
