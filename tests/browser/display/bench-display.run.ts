import { quantile } from "../../accuracy/quantile.ts";
import type { Browser } from "playwright-core";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { openPractice } from "./open-practice.ts";
import { builtPages } from "./pages-folder.ts";

/**
 * How fast the practice view paints with 60 estimates a second: paints a second, frames of the display missed, and script
 * time a paint, beside the goals and beside a page in the same browser that does nothing in its animation frames. Exit
 * code 1 where a goal is missed. The relay, the pages and the browser share this machine.
 */
const seconds = 8;
/** Paints a second are rounded to whole ones: the display's clock and this one differ by a few in ten thousand. */
const goals = { paintsPerSecond: 60, scriptP95: 4 };
const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
];

interface Pace {
  readonly perSecond: number;
  /** Frames of a 60 Hz display in which nothing was painted. */
  readonly missed: number;
}

const browser = await launchChromium();
let missedGoals = 0;
try {
  for (const viewport of sizes) {
    const empty = await paceOfEmptyPage(browser, viewport);
    const relay = await startScriptedRelay({ pages: builtPages() });
    const page = await browser.newPage({ viewport });
    const practice = await openPractice(page, relay);
    // The first paints compile what the later ones run.
    await practice.sayEstimates(60, 16, () => 0);
    const before = (await practice.paintTimes()).length;
    const commitsBefore = await practice.commits();
    const began = performance.now();
    const told = await sayAtSixty(practice);
    const lasted = (performance.now() - began) / 1000;
    const times = (await practice.paintTimes()).slice(before);
    const pace = paceOf((await practice.paintedAt()).slice(before));
    const commits = (await practice.commits()) - commitsBefore;
    const p95 = quantile(times, 0.95);
    const ok = p95 <= goals.scriptP95 && Math.round(pace.perSecond) >= goals.paintsPerSecond;
    if (!ok) missedGoals++;
    console.log(
      [
        `${viewport.width} x ${viewport.height}`,
        `${(told / lasted).toFixed(1)} estimates/s`,
        `${pace.perSecond.toFixed(1)} paints/s (goal ${goals.paintsPerSecond}), ${pace.missed} of ${Math.round(60 * lasted)} frames missed`,
        `an empty page ${empty.perSecond.toFixed(1)}/s, ${empty.missed} missed, ratio ${(pace.perSecond / empty.perSecond).toFixed(3)}`,
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
  missedGoals === 0
    ? "bench:display: all goals met"
    : `bench:display: ${missedGoals} of ${sizes.length} sizes missed a goal`,
);
process.exitCode = missedGoals === 0 ? 0 : 1;

/** A page that asks for animation frames and does nothing in them: what the browser gives at best here. */
async function paceOfEmptyPage(browser: Browser, viewport: { width: number; height: number }): Promise<Pace> {
  const page = await browser.newPage({ viewport });
  const times = await page.evaluate(
    (lasts) =>
      new Promise<number[]>((resolve) => {
        const seen: number[] = [];
        const next = (time: number): void => {
          seen.push(time);
          if (time - (seen[0] ?? time) < lasts) requestAnimationFrame(next);
          else resolve(seen);
        };
        requestAnimationFrame(next);
      }),
    (seconds * 1000) / 2,
  );
  await page.close();
  return paceOf(times);
}

function paceOf(times: readonly number[]): Pace {
  const lasted = ((times.at(-1) ?? NaN) - (times[0] ?? NaN)) / 1000;
  const missed = times.slice(1).map((time, at) => Math.round(((time - (times[at] ?? time)) * 60) / 1000) - 1);
  return {
    perSecond: (times.length - 1) / lasted,
    missed: missed.reduce((sum, frames) => sum + Math.max(0, frames), 0),
  };
}

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
